/**
 */
package org.roofspring.site.util;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import org.roofspring.site.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see org.roofspring.site.SitePackage
 * @generated
 */
public class SiteSwitch<T> extends Switch<T>
{
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static SitePackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SiteSwitch()
	{
		if (modelPackage == null)
		{
			modelPackage = SitePackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage)
	{
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject)
	{
		switch (classifierID)
		{
			case SitePackage.ROW:
			{
				Row row = (Row)theEObject;
				T result = caseRow(row);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.ELEMENT:
			{
				Element element = (Element)theEObject;
				T result = caseElement(element);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.NAMED_ELEMENT:
			{
				NamedElement namedElement = (NamedElement)theEObject;
				T result = caseNamedElement(namedElement);
				if (result == null) result = caseElement(namedElement);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.COMPONENT:
			{
				Component component = (Component)theEObject;
				T result = caseComponent(component);
				if (result == null) result = caseNamedElement(component);
				if (result == null) result = caseElement(component);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.RECEIVER:
			{
				Receiver receiver = (Receiver)theEObject;
				T result = caseReceiver(receiver);
				if (result == null) result = caseComponent(receiver);
				if (result == null) result = caseNamedElement(receiver);
				if (result == null) result = caseElement(receiver);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.CONDUIT:
			{
				Conduit conduit = (Conduit)theEObject;
				T result = caseConduit(conduit);
				if (result == null) result = caseReceiver(conduit);
				if (result == null) result = caseComponent(conduit);
				if (result == null) result = caseNamedElement(conduit);
				if (result == null) result = caseElement(conduit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PIPE_NODE:
			{
				PipeNode pipeNode = (PipeNode)theEObject;
				T result = casePipeNode(pipeNode);
				if (result == null) result = caseComponent(pipeNode);
				if (result == null) result = caseNamedElement(pipeNode);
				if (result == null) result = caseElement(pipeNode);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SITE:
			{
				Site site = (Site)theEObject;
				T result = caseSite(site);
				if (result == null) result = caseNamedElement(site);
				if (result == null) result = caseElement(site);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TARGET:
			{
				Target target = (Target)theEObject;
				T result = caseTarget(target);
				if (result == null) result = caseElement(target);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.RAIN_SOURCE:
			{
				RainSource rainSource = (RainSource)theEObject;
				T result = caseRainSource(rainSource);
				if (result == null) result = caseNamedElement(rainSource);
				if (result == null) result = caseElement(rainSource);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.MONTHLY_NORMAL:
			{
				MonthlyNormal monthlyNormal = (MonthlyNormal)theEObject;
				T result = caseMonthlyNormal(monthlyNormal);
				if (result == null) result = caseRow(monthlyNormal);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.CLIMATE_STRESS:
			{
				ClimateStress climateStress = (ClimateStress)theEObject;
				T result = caseClimateStress(climateStress);
				if (result == null) result = caseElement(climateStress);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SEASON_FACTOR:
			{
				SeasonFactor seasonFactor = (SeasonFactor)theEObject;
				T result = caseSeasonFactor(seasonFactor);
				if (result == null) result = caseRow(seasonFactor);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.INTENSITY_POINT:
			{
				IntensityPoint intensityPoint = (IntensityPoint)theEObject;
				T result = caseIntensityPoint(intensityPoint);
				if (result == null) result = caseRow(intensityPoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.ROOF:
			{
				Roof roof = (Roof)theEObject;
				T result = caseRoof(roof);
				if (result == null) result = caseComponent(roof);
				if (result == null) result = caseNamedElement(roof);
				if (result == null) result = caseElement(roof);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.ROOF_DRAIN:
			{
				RoofDrain roofDrain = (RoofDrain)theEObject;
				T result = caseRoofDrain(roofDrain);
				if (result == null) result = caseRow(roofDrain);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.GUTTER:
			{
				Gutter gutter = (Gutter)theEObject;
				T result = caseGutter(gutter);
				if (result == null) result = caseReceiver(gutter);
				if (result == null) result = caseComponent(gutter);
				if (result == null) result = caseNamedElement(gutter);
				if (result == null) result = caseElement(gutter);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.GUTTER_OUTLET:
			{
				GutterOutlet gutterOutlet = (GutterOutlet)theEObject;
				T result = caseGutterOutlet(gutterOutlet);
				if (result == null) result = caseNamedElement(gutterOutlet);
				if (result == null) result = caseElement(gutterOutlet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.DOWNPIPE:
			{
				Downpipe downpipe = (Downpipe)theEObject;
				T result = caseDownpipe(downpipe);
				if (result == null) result = caseConduit(downpipe);
				if (result == null) result = caseReceiver(downpipe);
				if (result == null) result = caseComponent(downpipe);
				if (result == null) result = caseNamedElement(downpipe);
				if (result == null) result = caseElement(downpipe);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SCREEN:
			{
				Screen screen = (Screen)theEObject;
				T result = caseScreen(screen);
				if (result == null) result = caseConduit(screen);
				if (result == null) result = caseReceiver(screen);
				if (result == null) result = caseComponent(screen);
				if (result == null) result = caseNamedElement(screen);
				if (result == null) result = caseElement(screen);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.FIRST_FLUSH_DIVERTER:
			{
				FirstFlushDiverter firstFlushDiverter = (FirstFlushDiverter)theEObject;
				T result = caseFirstFlushDiverter(firstFlushDiverter);
				if (result == null) result = caseConduit(firstFlushDiverter);
				if (result == null) result = caseReceiver(firstFlushDiverter);
				if (result == null) result = caseComponent(firstFlushDiverter);
				if (result == null) result = caseNamedElement(firstFlushDiverter);
				if (result == null) result = caseElement(firstFlushDiverter);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TANK:
			{
				Tank tank = (Tank)theEObject;
				T result = caseTank(tank);
				if (result == null) result = caseReceiver(tank);
				if (result == null) result = casePipeNode(tank);
				if (result == null) result = caseComponent(tank);
				if (result == null) result = caseNamedElement(tank);
				if (result == null) result = caseElement(tank);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.LEVEL_VOLUME_POINT:
			{
				LevelVolumePoint levelVolumePoint = (LevelVolumePoint)theEObject;
				T result = caseLevelVolumePoint(levelVolumePoint);
				if (result == null) result = caseRow(levelVolumePoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SITING:
			{
				Siting siting = (Siting)theEObject;
				T result = caseSiting(siting);
				if (result == null) result = caseElement(siting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TANK_LINK:
			{
				TankLink tankLink = (TankLink)theEObject;
				T result = caseTankLink(tankLink);
				if (result == null) result = caseComponent(tankLink);
				if (result == null) result = caseNamedElement(tankLink);
				if (result == null) result = caseElement(tankLink);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.JUNCTION:
			{
				Junction junction = (Junction)theEObject;
				T result = caseJunction(junction);
				if (result == null) result = casePipeNode(junction);
				if (result == null) result = caseComponent(junction);
				if (result == null) result = caseNamedElement(junction);
				if (result == null) result = caseElement(junction);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PIPE_RUN:
			{
				PipeRun pipeRun = (PipeRun)theEObject;
				T result = casePipeRun(pipeRun);
				if (result == null) result = caseComponent(pipeRun);
				if (result == null) result = caseNamedElement(pipeRun);
				if (result == null) result = caseElement(pipeRun);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.FITTING:
			{
				Fitting fitting = (Fitting)theEObject;
				T result = caseFitting(fitting);
				if (result == null) result = caseRow(fitting);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PROFILE_POINT:
			{
				ProfilePoint profilePoint = (ProfilePoint)theEObject;
				T result = caseProfilePoint(profilePoint);
				if (result == null) result = caseRow(profilePoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PUMP_DATA:
			{
				PumpData pumpData = (PumpData)theEObject;
				T result = casePumpData(pumpData);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PUMP_POINT:
			{
				PumpPoint pumpPoint = (PumpPoint)theEObject;
				T result = casePumpPoint(pumpPoint);
				if (result == null) result = caseRow(pumpPoint);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PUMP:
			{
				Pump pump = (Pump)theEObject;
				T result = casePump(pump);
				if (result == null) result = casePipeNode(pump);
				if (result == null) result = casePumpData(pump);
				if (result == null) result = caseComponent(pump);
				if (result == null) result = caseNamedElement(pump);
				if (result == null) result = caseElement(pump);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PUMP_CANDIDATE:
			{
				PumpCandidate pumpCandidate = (PumpCandidate)theEObject;
				T result = casePumpCandidate(pumpCandidate);
				if (result == null) result = caseNamedElement(pumpCandidate);
				if (result == null) result = casePumpData(pumpCandidate);
				if (result == null) result = caseElement(pumpCandidate);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SUPPLY_TIME:
			{
				SupplyTime supplyTime = (SupplyTime)theEObject;
				T result = caseSupplyTime(supplyTime);
				if (result == null) result = caseRow(supplyTime);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PRESSURE_VESSEL:
			{
				PressureVessel pressureVessel = (PressureVessel)theEObject;
				T result = casePressureVessel(pressureVessel);
				if (result == null) result = casePipeNode(pressureVessel);
				if (result == null) result = caseComponent(pressureVessel);
				if (result == null) result = caseNamedElement(pressureVessel);
				if (result == null) result = caseElement(pressureVessel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TAP:
			{
				Tap tap = (Tap)theEObject;
				T result = caseTap(tap);
				if (result == null) result = casePipeNode(tap);
				if (result == null) result = caseComponent(tap);
				if (result == null) result = caseNamedElement(tap);
				if (result == null) result = caseElement(tap);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.USE_CALENDAR:
			{
				UseCalendar useCalendar = (UseCalendar)theEObject;
				T result = caseUseCalendar(useCalendar);
				if (result == null) result = caseNamedElement(useCalendar);
				if (result == null) result = caseElement(useCalendar);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.USE_PERIOD:
			{
				UsePeriod usePeriod = (UsePeriod)theEObject;
				T result = caseUsePeriod(usePeriod);
				if (result == null) result = caseRow(usePeriod);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.HOLIDAY:
			{
				Holiday holiday = (Holiday)theEObject;
				T result = caseHoliday(holiday);
				if (result == null) result = caseRow(holiday);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.USE:
			{
				Use use = (Use)theEObject;
				T result = caseUse(use);
				if (result == null) result = caseComponent(use);
				if (result == null) result = caseNamedElement(use);
				if (result == null) result = caseElement(use);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.USE_PEAK:
			{
				UsePeak usePeak = (UsePeak)theEObject;
				T result = caseUsePeak(usePeak);
				if (result == null) result = caseRow(usePeak);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.RATIONING_RULE:
			{
				RationingRule rationingRule = (RationingRule)theEObject;
				T result = caseRationingRule(rationingRule);
				if (result == null) result = caseComponent(rationingRule);
				if (result == null) result = caseNamedElement(rationingRule);
				if (result == null) result = caseElement(rationingRule);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TOP_UP:
			{
				TopUp topUp = (TopUp)theEObject;
				T result = caseTopUp(topUp);
				if (result == null) result = caseComponent(topUp);
				if (result == null) result = caseNamedElement(topUp);
				if (result == null) result = caseElement(topUp);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.RAW_WATER:
			{
				RawWater rawWater = (RawWater)theEObject;
				T result = caseRawWater(rawWater);
				if (result == null) result = caseElement(rawWater);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.PATHOGEN_LEVEL:
			{
				PathogenLevel pathogenLevel = (PathogenLevel)theEObject;
				T result = casePathogenLevel(pathogenLevel);
				if (result == null) result = caseRow(pathogenLevel);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TREATMENT_TRAIN:
			{
				TreatmentTrain treatmentTrain = (TreatmentTrain)theEObject;
				T result = caseTreatmentTrain(treatmentTrain);
				if (result == null) result = casePipeNode(treatmentTrain);
				if (result == null) result = caseComponent(treatmentTrain);
				if (result == null) result = caseNamedElement(treatmentTrain);
				if (result == null) result = caseElement(treatmentTrain);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.TREATMENT_STEP:
			{
				TreatmentStep treatmentStep = (TreatmentStep)theEObject;
				T result = caseTreatmentStep(treatmentStep);
				if (result == null) result = caseNamedElement(treatmentStep);
				if (result == null) result = caseElement(treatmentStep);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.LOG_REDUCTION:
			{
				LogReduction logReduction = (LogReduction)theEObject;
				T result = caseLogReduction(logReduction);
				if (result == null) result = caseRow(logReduction);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.COST_ITEM:
			{
				CostItem costItem = (CostItem)theEObject;
				T result = caseCostItem(costItem);
				if (result == null) result = caseNamedElement(costItem);
				if (result == null) result = caseElement(costItem);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.ALTERNATIVE_SUPPLY:
			{
				AlternativeSupply alternativeSupply = (AlternativeSupply)theEObject;
				T result = caseAlternativeSupply(alternativeSupply);
				if (result == null) result = caseNamedElement(alternativeSupply);
				if (result == null) result = caseElement(alternativeSupply);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.ECONOMY:
			{
				Economy economy = (Economy)theEObject;
				T result = caseEconomy(economy);
				if (result == null) result = caseElement(economy);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.OPTION:
			{
				Option option = (Option)theEObject;
				T result = caseOption(option);
				if (result == null) result = caseNamedElement(option);
				if (result == null) result = caseElement(option);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.STAGE:
			{
				Stage stage = (Stage)theEObject;
				T result = caseStage(stage);
				if (result == null) result = caseOption(stage);
				if (result == null) result = caseNamedElement(stage);
				if (result == null) result = caseElement(stage);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.CHANGE:
			{
				Change change = (Change)theEObject;
				T result = caseChange(change);
				if (result == null) result = caseElement(change);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.UPKEEP_TASK:
			{
				UpkeepTask upkeepTask = (UpkeepTask)theEObject;
				T result = caseUpkeepTask(upkeepTask);
				if (result == null) result = caseNamedElement(upkeepTask);
				if (result == null) result = caseElement(upkeepTask);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SAFETY_MEASURE:
			{
				SafetyMeasure safetyMeasure = (SafetyMeasure)theEObject;
				T result = caseSafetyMeasure(safetyMeasure);
				if (result == null) result = caseNamedElement(safetyMeasure);
				if (result == null) result = caseElement(safetyMeasure);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.INSPECTION:
			{
				Inspection inspection = (Inspection)theEObject;
				T result = caseInspection(inspection);
				if (result == null) result = caseNamedElement(inspection);
				if (result == null) result = caseElement(inspection);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.INSPECTION_ANSWER:
			{
				InspectionAnswer inspectionAnswer = (InspectionAnswer)theEObject;
				T result = caseInspectionAnswer(inspectionAnswer);
				if (result == null) result = caseRow(inspectionAnswer);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.READING:
			{
				Reading reading = (Reading)theEObject;
				T result = caseReading(reading);
				if (result == null) result = caseElement(reading);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.WATER_TEST:
			{
				WaterTest waterTest = (WaterTest)theEObject;
				T result = caseWaterTest(waterTest);
				if (result == null) result = caseElement(waterTest);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.INCIDENT:
			{
				Incident incident = (Incident)theEObject;
				T result = caseIncident(incident);
				if (result == null) result = caseNamedElement(incident);
				if (result == null) result = caseElement(incident);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.SHARED_SCHEME:
			{
				SharedScheme sharedScheme = (SharedScheme)theEObject;
				T result = caseSharedScheme(sharedScheme);
				if (result == null) result = caseElement(sharedScheme);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.CASH_ENTRY:
			{
				CashEntry cashEntry = (CashEntry)theEObject;
				T result = caseCashEntry(cashEntry);
				if (result == null) result = caseRow(cashEntry);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.REMARK:
			{
				Remark remark = (Remark)theEObject;
				T result = caseRemark(remark);
				if (result == null) result = caseElement(remark);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case SitePackage.EXTENSION_ENTRY:
			{
				ExtensionEntry extensionEntry = (ExtensionEntry)theEObject;
				T result = caseExtensionEntry(extensionEntry);
				if (result == null) result = caseElement(extensionEntry);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Row</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Row</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRow(Row object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Element</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Element</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseElement(Element object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Named Element</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Named Element</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNamedElement(NamedElement object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Component</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Component</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseComponent(Component object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Receiver</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Receiver</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReceiver(Receiver object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Conduit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Conduit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseConduit(Conduit object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pipe Node</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pipe Node</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePipeNode(PipeNode object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Site</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSite(Site object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Target</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Target</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTarget(Target object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Rain Source</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Rain Source</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRainSource(RainSource object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Monthly Normal</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Monthly Normal</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMonthlyNormal(MonthlyNormal object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Climate Stress</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Climate Stress</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClimateStress(ClimateStress object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Season Factor</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Season Factor</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSeasonFactor(SeasonFactor object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Intensity Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Intensity Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIntensityPoint(IntensityPoint object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Roof</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Roof</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRoof(Roof object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Roof Drain</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Roof Drain</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRoofDrain(RoofDrain object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Gutter</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Gutter</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGutter(Gutter object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Gutter Outlet</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Gutter Outlet</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseGutterOutlet(GutterOutlet object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Downpipe</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Downpipe</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDownpipe(Downpipe object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Screen</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Screen</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseScreen(Screen object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>First Flush Diverter</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>First Flush Diverter</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFirstFlushDiverter(FirstFlushDiverter object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Tank</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Tank</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTank(Tank object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Level Volume Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Level Volume Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLevelVolumePoint(LevelVolumePoint object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Siting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Siting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSiting(Siting object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Tank Link</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Tank Link</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTankLink(TankLink object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Junction</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Junction</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseJunction(Junction object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pipe Run</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pipe Run</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePipeRun(PipeRun object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fitting</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fitting</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFitting(Fitting object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Profile Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Profile Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseProfilePoint(ProfilePoint object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pump Data</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pump Data</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePumpData(PumpData object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pump Point</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pump Point</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePumpPoint(PumpPoint object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pump</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pump</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePump(Pump object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pump Candidate</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pump Candidate</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePumpCandidate(PumpCandidate object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Supply Time</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Supply Time</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSupplyTime(SupplyTime object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pressure Vessel</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pressure Vessel</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePressureVessel(PressureVessel object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Tap</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Tap</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTap(Tap object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Use Calendar</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Use Calendar</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUseCalendar(UseCalendar object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Use Period</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Use Period</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUsePeriod(UsePeriod object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Holiday</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Holiday</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseHoliday(Holiday object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Use</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Use</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUse(Use object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Use Peak</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Use Peak</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUsePeak(UsePeak object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Rationing Rule</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Rationing Rule</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRationingRule(RationingRule object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Top Up</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Top Up</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTopUp(TopUp object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Raw Water</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Raw Water</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRawWater(RawWater object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Pathogen Level</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Pathogen Level</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePathogenLevel(PathogenLevel object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Treatment Train</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Treatment Train</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTreatmentTrain(TreatmentTrain object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Treatment Step</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Treatment Step</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTreatmentStep(TreatmentStep object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Log Reduction</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Log Reduction</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLogReduction(LogReduction object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cost Item</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cost Item</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCostItem(CostItem object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Alternative Supply</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Alternative Supply</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAlternativeSupply(AlternativeSupply object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Economy</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Economy</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseEconomy(Economy object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Option</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Option</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseOption(Option object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stage</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stage</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStage(Stage object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Change</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Change</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseChange(Change object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Upkeep Task</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Upkeep Task</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUpkeepTask(UpkeepTask object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Safety Measure</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Safety Measure</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSafetyMeasure(SafetyMeasure object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Inspection</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Inspection</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseInspection(Inspection object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Inspection Answer</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Inspection Answer</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseInspectionAnswer(InspectionAnswer object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Reading</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseReading(Reading object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Water Test</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Water Test</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWaterTest(WaterTest object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Incident</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Incident</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseIncident(Incident object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Shared Scheme</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Shared Scheme</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSharedScheme(SharedScheme object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cash Entry</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cash Entry</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCashEntry(CashEntry object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Remark</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Remark</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRemark(Remark object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Extension Entry</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Extension Entry</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExtensionEntry(ExtensionEntry object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object)
	{
		return null;
	}

} //SiteSwitch

/**
 */
package org.roofspring.site.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import org.roofspring.site.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see org.roofspring.site.SitePackage
 * @generated
 */
public class SiteAdapterFactory extends AdapterFactoryImpl
{
	/**
	 * The cached model package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static SitePackage modelPackage;

	/**
	 * Creates an instance of the adapter factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SiteAdapterFactory()
	{
		if (modelPackage == null)
		{
			modelPackage = SitePackage.eINSTANCE;
		}
	}

	/**
	 * Returns whether this factory is applicable for the type of the object.
	 * <!-- begin-user-doc -->
	 * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
	 * <!-- end-user-doc -->
	 * @return whether this factory is applicable for the type of the object.
	 * @generated
	 */
	@Override
	public boolean isFactoryForType(Object object)
	{
		if (object == modelPackage)
		{
			return true;
		}
		if (object instanceof EObject)
		{
			return ((EObject)object).eClass().getEPackage() == modelPackage;
		}
		return false;
	}

	/**
	 * The switch that delegates to the <code>createXXX</code> methods.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SiteSwitch<Adapter> modelSwitch =
		new SiteSwitch<Adapter>()
		{
			@Override
			public Adapter caseRow(Row object)
			{
				return createRowAdapter();
			}
			@Override
			public Adapter caseElement(Element object)
			{
				return createElementAdapter();
			}
			@Override
			public Adapter caseNamedElement(NamedElement object)
			{
				return createNamedElementAdapter();
			}
			@Override
			public Adapter caseComponent(Component object)
			{
				return createComponentAdapter();
			}
			@Override
			public Adapter caseReceiver(Receiver object)
			{
				return createReceiverAdapter();
			}
			@Override
			public Adapter caseConduit(Conduit object)
			{
				return createConduitAdapter();
			}
			@Override
			public Adapter casePipeNode(PipeNode object)
			{
				return createPipeNodeAdapter();
			}
			@Override
			public Adapter caseSite(Site object)
			{
				return createSiteAdapter();
			}
			@Override
			public Adapter caseTarget(Target object)
			{
				return createTargetAdapter();
			}
			@Override
			public Adapter caseRainSource(RainSource object)
			{
				return createRainSourceAdapter();
			}
			@Override
			public Adapter caseMonthlyNormal(MonthlyNormal object)
			{
				return createMonthlyNormalAdapter();
			}
			@Override
			public Adapter caseClimateStress(ClimateStress object)
			{
				return createClimateStressAdapter();
			}
			@Override
			public Adapter caseSeasonFactor(SeasonFactor object)
			{
				return createSeasonFactorAdapter();
			}
			@Override
			public Adapter caseIntensityPoint(IntensityPoint object)
			{
				return createIntensityPointAdapter();
			}
			@Override
			public Adapter caseRoof(Roof object)
			{
				return createRoofAdapter();
			}
			@Override
			public Adapter caseRoofDrain(RoofDrain object)
			{
				return createRoofDrainAdapter();
			}
			@Override
			public Adapter caseGutter(Gutter object)
			{
				return createGutterAdapter();
			}
			@Override
			public Adapter caseGutterOutlet(GutterOutlet object)
			{
				return createGutterOutletAdapter();
			}
			@Override
			public Adapter caseDownpipe(Downpipe object)
			{
				return createDownpipeAdapter();
			}
			@Override
			public Adapter caseScreen(Screen object)
			{
				return createScreenAdapter();
			}
			@Override
			public Adapter caseFirstFlushDiverter(FirstFlushDiverter object)
			{
				return createFirstFlushDiverterAdapter();
			}
			@Override
			public Adapter caseTank(Tank object)
			{
				return createTankAdapter();
			}
			@Override
			public Adapter caseLevelVolumePoint(LevelVolumePoint object)
			{
				return createLevelVolumePointAdapter();
			}
			@Override
			public Adapter caseSiting(Siting object)
			{
				return createSitingAdapter();
			}
			@Override
			public Adapter caseTankLink(TankLink object)
			{
				return createTankLinkAdapter();
			}
			@Override
			public Adapter caseJunction(Junction object)
			{
				return createJunctionAdapter();
			}
			@Override
			public Adapter casePipeRun(PipeRun object)
			{
				return createPipeRunAdapter();
			}
			@Override
			public Adapter caseFitting(Fitting object)
			{
				return createFittingAdapter();
			}
			@Override
			public Adapter caseProfilePoint(ProfilePoint object)
			{
				return createProfilePointAdapter();
			}
			@Override
			public Adapter casePumpData(PumpData object)
			{
				return createPumpDataAdapter();
			}
			@Override
			public Adapter casePumpPoint(PumpPoint object)
			{
				return createPumpPointAdapter();
			}
			@Override
			public Adapter casePump(Pump object)
			{
				return createPumpAdapter();
			}
			@Override
			public Adapter casePumpCandidate(PumpCandidate object)
			{
				return createPumpCandidateAdapter();
			}
			@Override
			public Adapter caseSupplyTime(SupplyTime object)
			{
				return createSupplyTimeAdapter();
			}
			@Override
			public Adapter casePressureVessel(PressureVessel object)
			{
				return createPressureVesselAdapter();
			}
			@Override
			public Adapter caseTap(Tap object)
			{
				return createTapAdapter();
			}
			@Override
			public Adapter caseUseCalendar(UseCalendar object)
			{
				return createUseCalendarAdapter();
			}
			@Override
			public Adapter caseUsePeriod(UsePeriod object)
			{
				return createUsePeriodAdapter();
			}
			@Override
			public Adapter caseHoliday(Holiday object)
			{
				return createHolidayAdapter();
			}
			@Override
			public Adapter caseUse(Use object)
			{
				return createUseAdapter();
			}
			@Override
			public Adapter caseUsePeak(UsePeak object)
			{
				return createUsePeakAdapter();
			}
			@Override
			public Adapter caseRationingRule(RationingRule object)
			{
				return createRationingRuleAdapter();
			}
			@Override
			public Adapter caseTopUp(TopUp object)
			{
				return createTopUpAdapter();
			}
			@Override
			public Adapter caseRawWater(RawWater object)
			{
				return createRawWaterAdapter();
			}
			@Override
			public Adapter casePathogenLevel(PathogenLevel object)
			{
				return createPathogenLevelAdapter();
			}
			@Override
			public Adapter caseTreatmentTrain(TreatmentTrain object)
			{
				return createTreatmentTrainAdapter();
			}
			@Override
			public Adapter caseTreatmentStep(TreatmentStep object)
			{
				return createTreatmentStepAdapter();
			}
			@Override
			public Adapter caseLogReduction(LogReduction object)
			{
				return createLogReductionAdapter();
			}
			@Override
			public Adapter caseCostItem(CostItem object)
			{
				return createCostItemAdapter();
			}
			@Override
			public Adapter caseAlternativeSupply(AlternativeSupply object)
			{
				return createAlternativeSupplyAdapter();
			}
			@Override
			public Adapter caseEconomy(Economy object)
			{
				return createEconomyAdapter();
			}
			@Override
			public Adapter caseOption(Option object)
			{
				return createOptionAdapter();
			}
			@Override
			public Adapter caseStage(Stage object)
			{
				return createStageAdapter();
			}
			@Override
			public Adapter caseChange(Change object)
			{
				return createChangeAdapter();
			}
			@Override
			public Adapter caseUpkeepTask(UpkeepTask object)
			{
				return createUpkeepTaskAdapter();
			}
			@Override
			public Adapter caseSafetyMeasure(SafetyMeasure object)
			{
				return createSafetyMeasureAdapter();
			}
			@Override
			public Adapter caseInspection(Inspection object)
			{
				return createInspectionAdapter();
			}
			@Override
			public Adapter caseInspectionAnswer(InspectionAnswer object)
			{
				return createInspectionAnswerAdapter();
			}
			@Override
			public Adapter caseReading(Reading object)
			{
				return createReadingAdapter();
			}
			@Override
			public Adapter caseWaterTest(WaterTest object)
			{
				return createWaterTestAdapter();
			}
			@Override
			public Adapter caseIncident(Incident object)
			{
				return createIncidentAdapter();
			}
			@Override
			public Adapter caseSharedScheme(SharedScheme object)
			{
				return createSharedSchemeAdapter();
			}
			@Override
			public Adapter caseCashEntry(CashEntry object)
			{
				return createCashEntryAdapter();
			}
			@Override
			public Adapter caseRemark(Remark object)
			{
				return createRemarkAdapter();
			}
			@Override
			public Adapter caseExtensionEntry(ExtensionEntry object)
			{
				return createExtensionEntryAdapter();
			}
			@Override
			public Adapter defaultCase(EObject object)
			{
				return createEObjectAdapter();
			}
		};

	/**
	 * Creates an adapter for the <code>target</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param target the object to adapt.
	 * @return the adapter for the <code>target</code>.
	 * @generated
	 */
	@Override
	public Adapter createAdapter(Notifier target)
	{
		return modelSwitch.doSwitch((EObject)target);
	}


	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Row <em>Row</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Row
	 * @generated
	 */
	public Adapter createRowAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Element
	 * @generated
	 */
	public Adapter createElementAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.NamedElement <em>Named Element</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.NamedElement
	 * @generated
	 */
	public Adapter createNamedElementAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Component <em>Component</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Component
	 * @generated
	 */
	public Adapter createComponentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Receiver <em>Receiver</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Receiver
	 * @generated
	 */
	public Adapter createReceiverAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Conduit <em>Conduit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Conduit
	 * @generated
	 */
	public Adapter createConduitAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PipeNode <em>Pipe Node</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PipeNode
	 * @generated
	 */
	public Adapter createPipeNodeAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Site
	 * @generated
	 */
	public Adapter createSiteAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Target <em>Target</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Target
	 * @generated
	 */
	public Adapter createTargetAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.RainSource <em>Rain Source</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.RainSource
	 * @generated
	 */
	public Adapter createRainSourceAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.MonthlyNormal <em>Monthly Normal</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.MonthlyNormal
	 * @generated
	 */
	public Adapter createMonthlyNormalAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.ClimateStress <em>Climate Stress</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.ClimateStress
	 * @generated
	 */
	public Adapter createClimateStressAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.SeasonFactor <em>Season Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.SeasonFactor
	 * @generated
	 */
	public Adapter createSeasonFactorAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.IntensityPoint <em>Intensity Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.IntensityPoint
	 * @generated
	 */
	public Adapter createIntensityPointAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Roof <em>Roof</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Roof
	 * @generated
	 */
	public Adapter createRoofAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.RoofDrain <em>Roof Drain</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.RoofDrain
	 * @generated
	 */
	public Adapter createRoofDrainAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Gutter <em>Gutter</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Gutter
	 * @generated
	 */
	public Adapter createGutterAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.GutterOutlet <em>Gutter Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.GutterOutlet
	 * @generated
	 */
	public Adapter createGutterOutletAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Downpipe <em>Downpipe</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Downpipe
	 * @generated
	 */
	public Adapter createDownpipeAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Screen <em>Screen</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Screen
	 * @generated
	 */
	public Adapter createScreenAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.FirstFlushDiverter <em>First Flush Diverter</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.FirstFlushDiverter
	 * @generated
	 */
	public Adapter createFirstFlushDiverterAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Tank <em>Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Tank
	 * @generated
	 */
	public Adapter createTankAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.LevelVolumePoint <em>Level Volume Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.LevelVolumePoint
	 * @generated
	 */
	public Adapter createLevelVolumePointAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Siting <em>Siting</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Siting
	 * @generated
	 */
	public Adapter createSitingAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.TankLink <em>Tank Link</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.TankLink
	 * @generated
	 */
	public Adapter createTankLinkAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Junction <em>Junction</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Junction
	 * @generated
	 */
	public Adapter createJunctionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PipeRun <em>Pipe Run</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PipeRun
	 * @generated
	 */
	public Adapter createPipeRunAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Fitting <em>Fitting</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Fitting
	 * @generated
	 */
	public Adapter createFittingAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.ProfilePoint <em>Profile Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.ProfilePoint
	 * @generated
	 */
	public Adapter createProfilePointAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PumpData <em>Pump Data</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PumpData
	 * @generated
	 */
	public Adapter createPumpDataAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PumpPoint <em>Pump Point</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PumpPoint
	 * @generated
	 */
	public Adapter createPumpPointAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Pump <em>Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Pump
	 * @generated
	 */
	public Adapter createPumpAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PumpCandidate <em>Pump Candidate</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PumpCandidate
	 * @generated
	 */
	public Adapter createPumpCandidateAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.SupplyTime <em>Supply Time</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.SupplyTime
	 * @generated
	 */
	public Adapter createSupplyTimeAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PressureVessel <em>Pressure Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PressureVessel
	 * @generated
	 */
	public Adapter createPressureVesselAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Tap <em>Tap</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Tap
	 * @generated
	 */
	public Adapter createTapAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.UseCalendar <em>Use Calendar</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.UseCalendar
	 * @generated
	 */
	public Adapter createUseCalendarAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.UsePeriod <em>Use Period</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.UsePeriod
	 * @generated
	 */
	public Adapter createUsePeriodAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Holiday <em>Holiday</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Holiday
	 * @generated
	 */
	public Adapter createHolidayAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Use <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Use
	 * @generated
	 */
	public Adapter createUseAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.UsePeak <em>Use Peak</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.UsePeak
	 * @generated
	 */
	public Adapter createUsePeakAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.RationingRule <em>Rationing Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.RationingRule
	 * @generated
	 */
	public Adapter createRationingRuleAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.TopUp <em>Top Up</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.TopUp
	 * @generated
	 */
	public Adapter createTopUpAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.RawWater <em>Raw Water</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.RawWater
	 * @generated
	 */
	public Adapter createRawWaterAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.PathogenLevel <em>Pathogen Level</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.PathogenLevel
	 * @generated
	 */
	public Adapter createPathogenLevelAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.TreatmentTrain <em>Treatment Train</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.TreatmentTrain
	 * @generated
	 */
	public Adapter createTreatmentTrainAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.TreatmentStep <em>Treatment Step</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.TreatmentStep
	 * @generated
	 */
	public Adapter createTreatmentStepAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.LogReduction <em>Log Reduction</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.LogReduction
	 * @generated
	 */
	public Adapter createLogReductionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.CostItem <em>Cost Item</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.CostItem
	 * @generated
	 */
	public Adapter createCostItemAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.AlternativeSupply <em>Alternative Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.AlternativeSupply
	 * @generated
	 */
	public Adapter createAlternativeSupplyAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Economy <em>Economy</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Economy
	 * @generated
	 */
	public Adapter createEconomyAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Option <em>Option</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Option
	 * @generated
	 */
	public Adapter createOptionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Stage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Stage
	 * @generated
	 */
	public Adapter createStageAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Change <em>Change</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Change
	 * @generated
	 */
	public Adapter createChangeAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.UpkeepTask <em>Upkeep Task</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.UpkeepTask
	 * @generated
	 */
	public Adapter createUpkeepTaskAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.SafetyMeasure <em>Safety Measure</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.SafetyMeasure
	 * @generated
	 */
	public Adapter createSafetyMeasureAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Inspection <em>Inspection</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Inspection
	 * @generated
	 */
	public Adapter createInspectionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.InspectionAnswer <em>Inspection Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.InspectionAnswer
	 * @generated
	 */
	public Adapter createInspectionAnswerAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Reading
	 * @generated
	 */
	public Adapter createReadingAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.WaterTest <em>Water Test</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.WaterTest
	 * @generated
	 */
	public Adapter createWaterTestAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Incident <em>Incident</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Incident
	 * @generated
	 */
	public Adapter createIncidentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.SharedScheme <em>Shared Scheme</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.SharedScheme
	 * @generated
	 */
	public Adapter createSharedSchemeAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.CashEntry <em>Cash Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.CashEntry
	 * @generated
	 */
	public Adapter createCashEntryAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.Remark <em>Remark</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.Remark
	 * @generated
	 */
	public Adapter createRemarkAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.roofspring.site.ExtensionEntry <em>Extension Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.roofspring.site.ExtensionEntry
	 * @generated
	 */
	public Adapter createExtensionEntryAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for the default case.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @generated
	 */
	public Adapter createEObjectAdapter()
	{
		return null;
	}

} //SiteAdapterFactory

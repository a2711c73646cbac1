/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.impl.EFactoryImpl;

import org.eclipse.emf.ecore.plugin.EcorePlugin;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.*;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Factory</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class SiteFactoryImpl extends EFactoryImpl implements SiteFactory
{
	/**
	 * Creates the default factory implementation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static SiteFactory init()
	{
		try
		{
			SiteFactory theSiteFactory = (SiteFactory)EPackage.Registry.INSTANCE.getEFactory(SitePackage.eNS_URI);
			if (theSiteFactory != null)
			{
				return theSiteFactory;
			}
		}
		catch (Exception exception)
		{
			EcorePlugin.INSTANCE.log(exception);
		}
		return new SiteFactoryImpl();
	}

	/**
	 * Creates an instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SiteFactoryImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EObject create(EClass eClass)
	{
		switch (eClass.getClassifierID())
		{
			case SitePackage.SITE: return createSite();
			case SitePackage.TARGET: return createTarget();
			case SitePackage.RAIN_SOURCE: return createRainSource();
			case SitePackage.MONTHLY_NORMAL: return createMonthlyNormal();
			case SitePackage.CLIMATE_STRESS: return createClimateStress();
			case SitePackage.SEASON_FACTOR: return createSeasonFactor();
			case SitePackage.INTENSITY_POINT: return createIntensityPoint();
			case SitePackage.ROOF: return createRoof();
			case SitePackage.ROOF_DRAIN: return createRoofDrain();
			case SitePackage.GUTTER: return createGutter();
			case SitePackage.GUTTER_OUTLET: return createGutterOutlet();
			case SitePackage.DOWNPIPE: return createDownpipe();
			case SitePackage.SCREEN: return createScreen();
			case SitePackage.FIRST_FLUSH_DIVERTER: return createFirstFlushDiverter();
			case SitePackage.TANK: return createTank();
			case SitePackage.LEVEL_VOLUME_POINT: return createLevelVolumePoint();
			case SitePackage.SITING: return createSiting();
			case SitePackage.TANK_LINK: return createTankLink();
			case SitePackage.JUNCTION: return createJunction();
			case SitePackage.PIPE_RUN: return createPipeRun();
			case SitePackage.FITTING: return createFitting();
			case SitePackage.PROFILE_POINT: return createProfilePoint();
			case SitePackage.PUMP_POINT: return createPumpPoint();
			case SitePackage.PUMP: return createPump();
			case SitePackage.PUMP_CANDIDATE: return createPumpCandidate();
			case SitePackage.SUPPLY_TIME: return createSupplyTime();
			case SitePackage.PRESSURE_VESSEL: return createPressureVessel();
			case SitePackage.TAP: return createTap();
			case SitePackage.USE_CALENDAR: return createUseCalendar();
			case SitePackage.USE_PERIOD: return createUsePeriod();
			case SitePackage.HOLIDAY: return createHoliday();
			case SitePackage.USE: return createUse();
			case SitePackage.USE_PEAK: return createUsePeak();
			case SitePackage.RATIONING_RULE: return createRationingRule();
			case SitePackage.TOP_UP: return createTopUp();
			case SitePackage.RAW_WATER: return createRawWater();
			case SitePackage.PATHOGEN_LEVEL: return createPathogenLevel();
			case SitePackage.TREATMENT_TRAIN: return createTreatmentTrain();
			case SitePackage.TREATMENT_STEP: return createTreatmentStep();
			case SitePackage.LOG_REDUCTION: return createLogReduction();
			case SitePackage.COST_ITEM: return createCostItem();
			case SitePackage.ALTERNATIVE_SUPPLY: return createAlternativeSupply();
			case SitePackage.ECONOMY: return createEconomy();
			case SitePackage.OPTION: return createOption();
			case SitePackage.STAGE: return createStage();
			case SitePackage.CHANGE: return createChange();
			case SitePackage.UPKEEP_TASK: return createUpkeepTask();
			case SitePackage.SAFETY_MEASURE: return createSafetyMeasure();
			case SitePackage.INSPECTION: return createInspection();
			case SitePackage.INSPECTION_ANSWER: return createInspectionAnswer();
			case SitePackage.READING: return createReading();
			case SitePackage.WATER_TEST: return createWaterTest();
			case SitePackage.INCIDENT: return createIncident();
			case SitePackage.SHARED_SCHEME: return createSharedScheme();
			case SitePackage.CASH_ENTRY: return createCashEntry();
			case SitePackage.REMARK: return createRemark();
			case SitePackage.EXTENSION_ENTRY: return createExtensionEntry();
			default:
				throw new IllegalArgumentException("The class '" + eClass.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object createFromString(EDataType eDataType, String initialValue)
	{
		switch (eDataType.getClassifierID())
		{
			case SitePackage.RAIN_FORMAT:
				return createRainFormatFromString(eDataType, initialValue);
			case SitePackage.DEPTH_UNIT:
				return createDepthUnitFromString(eDataType, initialValue);
			case SitePackage.GAP_METHOD:
				return createGapMethodFromString(eDataType, initialValue);
			case SitePackage.WEEKDAY:
				return createWeekdayFromString(eDataType, initialValue);
			case SitePackage.ROOF_MATERIAL:
				return createRoofMaterialFromString(eDataType, initialValue);
			case SitePackage.RUNOFF_BASIS:
				return createRunoffBasisFromString(eDataType, initialValue);
			case SitePackage.HAZARD:
				return createHazardFromString(eDataType, initialValue);
			case SitePackage.GUTTER_PROFILE:
				return createGutterProfileFromString(eDataType, initialValue);
			case SitePackage.OUTLET_SHAPE:
				return createOutletShapeFromString(eDataType, initialValue);
			case SitePackage.TANK_KIND:
				return createTankKindFromString(eDataType, initialValue);
			case SitePackage.TANK_MATERIAL:
				return createTankMaterialFromString(eDataType, initialValue);
			case SitePackage.TANK_COVER:
				return createTankCoverFromString(eDataType, initialValue);
			case SitePackage.PLACE_IN_GROUND:
				return createPlaceInGroundFromString(eDataType, initialValue);
			case SitePackage.TANK_LINK_KIND:
				return createTankLinkKindFromString(eDataType, initialValue);
			case SitePackage.RUN_USE:
				return createRunUseFromString(eDataType, initialValue);
			case SitePackage.PIPE_MATERIAL:
				return createPipeMaterialFromString(eDataType, initialValue);
			case SitePackage.FITTING_KIND:
				return createFittingKindFromString(eDataType, initialValue);
			case SitePackage.PUMP_KIND:
				return createPumpKindFromString(eDataType, initialValue);
			case SitePackage.PUMP_ARRANGEMENT:
				return createPumpArrangementFromString(eDataType, initialValue);
			case SitePackage.ENERGY_SOURCE:
				return createEnergySourceFromString(eDataType, initialValue);
			case SitePackage.TAP_KIND:
				return createTapKindFromString(eDataType, initialValue);
			case SitePackage.PURPOSE:
				return createPurposeFromString(eDataType, initialValue);
			case SitePackage.DISINFECTANT_PRODUCT:
				return createDisinfectantProductFromString(eDataType, initialValue);
			case SitePackage.STRENGTH_BASIS:
				return createStrengthBasisFromString(eDataType, initialValue);
			case SitePackage.STEP_KIND:
				return createStepKindFromString(eDataType, initialValue);
			case SitePackage.RATING_BASIS:
				return createRatingBasisFromString(eDataType, initialValue);
			case SitePackage.PATHOGEN_GROUP:
				return createPathogenGroupFromString(eDataType, initialValue);
			case SitePackage.COST_CATEGORY:
				return createCostCategoryFromString(eDataType, initialValue);
			case SitePackage.SUPPLY_KIND:
				return createSupplyKindFromString(eDataType, initialValue);
			case SitePackage.PRICE_BASIS:
				return createPriceBasisFromString(eDataType, initialValue);
			case SitePackage.READING_KIND:
				return createReadingKindFromString(eDataType, initialValue);
			case SitePackage.WATER_PARAMETER:
				return createWaterParameterFromString(eDataType, initialValue);
			case SitePackage.INCIDENT_KIND:
				return createIncidentKindFromString(eDataType, initialValue);
			case SitePackage.REMARK_KIND:
				return createRemarkKindFromString(eDataType, initialValue);
			case SitePackage.VALUE_TYPE:
				return createValueTypeFromString(eDataType, initialValue);
			case SitePackage.UNIT_PREFERENCE:
				return createUnitPreferenceFromString(eDataType, initialValue);
			case SitePackage.TOP_UP_SOURCE:
				return createTopUpSourceFromString(eDataType, initialValue);
			case SitePackage.CHECK_ANSWER:
				return createCheckAnswerFromString(eDataType, initialValue);
			case SitePackage.LENGTH:
				return createLengthFromString(eDataType, initialValue);
			case SitePackage.LEVEL:
				return createLevelFromString(eDataType, initialValue);
			case SitePackage.BORE:
				return createBoreFromString(eDataType, initialValue);
			case SitePackage.RAIN_DEPTH:
				return createRainDepthFromString(eDataType, initialValue);
			case SitePackage.PARTICLE_SIZE:
				return createParticleSizeFromString(eDataType, initialValue);
			case SitePackage.HEAD:
				return createHeadFromString(eDataType, initialValue);
			case SitePackage.AREA:
				return createAreaFromString(eDataType, initialValue);
			case SitePackage.OPENING_AREA:
				return createOpeningAreaFromString(eDataType, initialValue);
			case SitePackage.VOLUME:
				return createVolumeFromString(eDataType, initialValue);
			case SitePackage.SMALL_VOLUME:
				return createSmallVolumeFromString(eDataType, initialValue);
			case SitePackage.FLOW:
				return createFlowFromString(eDataType, initialValue);
			case SitePackage.TAP_FLOW:
				return createTapFlowFromString(eDataType, initialValue);
			case SitePackage.DAILY_VOLUME:
				return createDailyVolumeFromString(eDataType, initialValue);
			case SitePackage.VELOCITY:
				return createVelocityFromString(eDataType, initialValue);
			case SitePackage.PRESSURE:
				return createPressureFromString(eDataType, initialValue);
			case SitePackage.PRESSURE_HEAD:
				return createPressureHeadFromString(eDataType, initialValue);
			case SitePackage.TEMPERATURE:
				return createTemperatureFromString(eDataType, initialValue);
			case SitePackage.POWER:
				return createPowerFromString(eDataType, initialValue);
			case SitePackage.SPECIFIC_ENERGY:
				return createSpecificEnergyFromString(eDataType, initialValue);
			case SitePackage.SECONDS:
				return createSecondsFromString(eDataType, initialValue);
			case SitePackage.MINUTES:
				return createMinutesFromString(eDataType, initialValue);
			case SitePackage.HOURS:
				return createHoursFromString(eDataType, initialValue);
			case SitePackage.DAYS:
				return createDaysFromString(eDataType, initialValue);
			case SitePackage.YEARS:
				return createYearsFromString(eDataType, initialValue);
			case SitePackage.INTENSITY:
				return createIntensityFromString(eDataType, initialValue);
			case SitePackage.CONCENTRATION:
				return createConcentrationFromString(eDataType, initialValue);
			case SitePackage.UV_DOSE:
				return createUvDoseFromString(eDataType, initialValue);
			case SitePackage.TURBIDITY:
				return createTurbidityFromString(eDataType, initialValue);
			case SitePackage.DENSITY:
				return createDensityFromString(eDataType, initialValue);
			case SitePackage.MASS:
				return createMassFromString(eDataType, initialValue);
			case SitePackage.ROTATIONAL_SPEED:
				return createRotationalSpeedFromString(eDataType, initialValue);
			case SitePackage.ANGLE:
				return createAngleFromString(eDataType, initialValue);
			case SitePackage.RATE:
				return createRateFromString(eDataType, initialValue);
			case SitePackage.MONEY:
				return createMoneyFromString(eDataType, initialValue);
			case SitePackage.UNIT_COST:
				return createUnitCostFromString(eDataType, initialValue);
			case SitePackage.ENERGY_COST:
				return createEnergyCostFromString(eDataType, initialValue);
			case SitePackage.COEFFICIENT:
				return createCoefficientFromString(eDataType, initialValue);
			case SitePackage.SHARE:
				return createShareFromString(eDataType, initialValue);
			case SitePackage.MEASUREMENT:
				return createMeasurementFromString(eDataType, initialValue);
			case SitePackage.DATE:
				return createDateFromString(eDataType, initialValue);
			case SitePackage.DAY_OF_YEAR:
				return createDayOfYearFromString(eDataType, initialValue);
			case SitePackage.TIME_OF_DAY:
				return createTimeOfDayFromString(eDataType, initialValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String convertToString(EDataType eDataType, Object instanceValue)
	{
		switch (eDataType.getClassifierID())
		{
			case SitePackage.RAIN_FORMAT:
				return convertRainFormatToString(eDataType, instanceValue);
			case SitePackage.DEPTH_UNIT:
				return convertDepthUnitToString(eDataType, instanceValue);
			case SitePackage.GAP_METHOD:
				return convertGapMethodToString(eDataType, instanceValue);
			case SitePackage.WEEKDAY:
				return convertWeekdayToString(eDataType, instanceValue);
			case SitePackage.ROOF_MATERIAL:
				return convertRoofMaterialToString(eDataType, instanceValue);
			case SitePackage.RUNOFF_BASIS:
				return convertRunoffBasisToString(eDataType, instanceValue);
			case SitePackage.HAZARD:
				return convertHazardToString(eDataType, instanceValue);
			case SitePackage.GUTTER_PROFILE:
				return convertGutterProfileToString(eDataType, instanceValue);
			case SitePackage.OUTLET_SHAPE:
				return convertOutletShapeToString(eDataType, instanceValue);
			case SitePackage.TANK_KIND:
				return convertTankKindToString(eDataType, instanceValue);
			case SitePackage.TANK_MATERIAL:
				return convertTankMaterialToString(eDataType, instanceValue);
			case SitePackage.TANK_COVER:
				return convertTankCoverToString(eDataType, instanceValue);
			case SitePackage.PLACE_IN_GROUND:
				return convertPlaceInGroundToString(eDataType, instanceValue);
			case SitePackage.TANK_LINK_KIND:
				return convertTankLinkKindToString(eDataType, instanceValue);
			case SitePackage.RUN_USE:
				return convertRunUseToString(eDataType, instanceValue);
			case SitePackage.PIPE_MATERIAL:
				return convertPipeMaterialToString(eDataType, instanceValue);
			case SitePackage.FITTING_KIND:
				return convertFittingKindToString(eDataType, instanceValue);
			case SitePackage.PUMP_KIND:
				return convertPumpKindToString(eDataType, instanceValue);
			case SitePackage.PUMP_ARRANGEMENT:
				return convertPumpArrangementToString(eDataType, instanceValue);
			case SitePackage.ENERGY_SOURCE:
				return convertEnergySourceToString(eDataType, instanceValue);
			case SitePackage.TAP_KIND:
				return convertTapKindToString(eDataType, instanceValue);
			case SitePackage.PURPOSE:
				return convertPurposeToString(eDataType, instanceValue);
			case SitePackage.DISINFECTANT_PRODUCT:
				return convertDisinfectantProductToString(eDataType, instanceValue);
			case SitePackage.STRENGTH_BASIS:
				return convertStrengthBasisToString(eDataType, instanceValue);
			case SitePackage.STEP_KIND:
				return convertStepKindToString(eDataType, instanceValue);
			case SitePackage.RATING_BASIS:
				return convertRatingBasisToString(eDataType, instanceValue);
			case SitePackage.PATHOGEN_GROUP:
				return convertPathogenGroupToString(eDataType, instanceValue);
			case SitePackage.COST_CATEGORY:
				return convertCostCategoryToString(eDataType, instanceValue);
			case SitePackage.SUPPLY_KIND:
				return convertSupplyKindToString(eDataType, instanceValue);
			case SitePackage.PRICE_BASIS:
				return convertPriceBasisToString(eDataType, instanceValue);
			case SitePackage.READING_KIND:
				return convertReadingKindToString(eDataType, instanceValue);
			case SitePackage.WATER_PARAMETER:
				return convertWaterParameterToString(eDataType, instanceValue);
			case SitePackage.INCIDENT_KIND:
				return convertIncidentKindToString(eDataType, instanceValue);
			case SitePackage.REMARK_KIND:
				return convertRemarkKindToString(eDataType, instanceValue);
			case SitePackage.VALUE_TYPE:
				return convertValueTypeToString(eDataType, instanceValue);
			case SitePackage.UNIT_PREFERENCE:
				return convertUnitPreferenceToString(eDataType, instanceValue);
			case SitePackage.TOP_UP_SOURCE:
				return convertTopUpSourceToString(eDataType, instanceValue);
			case SitePackage.CHECK_ANSWER:
				return convertCheckAnswerToString(eDataType, instanceValue);
			case SitePackage.LENGTH:
				return convertLengthToString(eDataType, instanceValue);
			case SitePackage.LEVEL:
				return convertLevelToString(eDataType, instanceValue);
			case SitePackage.BORE:
				return convertBoreToString(eDataType, instanceValue);
			case SitePackage.RAIN_DEPTH:
				return convertRainDepthToString(eDataType, instanceValue);
			case SitePackage.PARTICLE_SIZE:
				return convertParticleSizeToString(eDataType, instanceValue);
			case SitePackage.HEAD:
				return convertHeadToString(eDataType, instanceValue);
			case SitePackage.AREA:
				return convertAreaToString(eDataType, instanceValue);
			case SitePackage.OPENING_AREA:
				return convertOpeningAreaToString(eDataType, instanceValue);
			case SitePackage.VOLUME:
				return convertVolumeToString(eDataType, instanceValue);
			case SitePackage.SMALL_VOLUME:
				return convertSmallVolumeToString(eDataType, instanceValue);
			case SitePackage.FLOW:
				return convertFlowToString(eDataType, instanceValue);
			case SitePackage.TAP_FLOW:
				return convertTapFlowToString(eDataType, instanceValue);
			case SitePackage.DAILY_VOLUME:
				return convertDailyVolumeToString(eDataType, instanceValue);
			case SitePackage.VELOCITY:
				return convertVelocityToString(eDataType, instanceValue);
			case SitePackage.PRESSURE:
				return convertPressureToString(eDataType, instanceValue);
			case SitePackage.PRESSURE_HEAD:
				return convertPressureHeadToString(eDataType, instanceValue);
			case SitePackage.TEMPERATURE:
				return convertTemperatureToString(eDataType, instanceValue);
			case SitePackage.POWER:
				return convertPowerToString(eDataType, instanceValue);
			case SitePackage.SPECIFIC_ENERGY:
				return convertSpecificEnergyToString(eDataType, instanceValue);
			case SitePackage.SECONDS:
				return convertSecondsToString(eDataType, instanceValue);
			case SitePackage.MINUTES:
				return convertMinutesToString(eDataType, instanceValue);
			case SitePackage.HOURS:
				return convertHoursToString(eDataType, instanceValue);
			case SitePackage.DAYS:
				return convertDaysToString(eDataType, instanceValue);
			case SitePackage.YEARS:
				return convertYearsToString(eDataType, instanceValue);
			case SitePackage.INTENSITY:
				return convertIntensityToString(eDataType, instanceValue);
			case SitePackage.CONCENTRATION:
				return convertConcentrationToString(eDataType, instanceValue);
			case SitePackage.UV_DOSE:
				return convertUvDoseToString(eDataType, instanceValue);
			case SitePackage.TURBIDITY:
				return convertTurbidityToString(eDataType, instanceValue);
			case SitePackage.DENSITY:
				return convertDensityToString(eDataType, instanceValue);
			case SitePackage.MASS:
				return convertMassToString(eDataType, instanceValue);
			case SitePackage.ROTATIONAL_SPEED:
				return convertRotationalSpeedToString(eDataType, instanceValue);
			case SitePackage.ANGLE:
				return convertAngleToString(eDataType, instanceValue);
			case SitePackage.RATE:
				return convertRateToString(eDataType, instanceValue);
			case SitePackage.MONEY:
				return convertMoneyToString(eDataType, instanceValue);
			case SitePackage.UNIT_COST:
				return convertUnitCostToString(eDataType, instanceValue);
			case SitePackage.ENERGY_COST:
				return convertEnergyCostToString(eDataType, instanceValue);
			case SitePackage.COEFFICIENT:
				return convertCoefficientToString(eDataType, instanceValue);
			case SitePackage.SHARE:
				return convertShareToString(eDataType, instanceValue);
			case SitePackage.MEASUREMENT:
				return convertMeasurementToString(eDataType, instanceValue);
			case SitePackage.DATE:
				return convertDateToString(eDataType, instanceValue);
			case SitePackage.DAY_OF_YEAR:
				return convertDayOfYearToString(eDataType, instanceValue);
			case SitePackage.TIME_OF_DAY:
				return convertTimeOfDayToString(eDataType, instanceValue);
			default:
				throw new IllegalArgumentException("The datatype '" + eDataType.getName() + "' is not a valid classifier");
		}
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site createSite()
	{
		SiteImpl site = new SiteImpl();
		return site;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Target createTarget()
	{
		TargetImpl target = new TargetImpl();
		return target;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RainSource createRainSource()
	{
		RainSourceImpl rainSource = new RainSourceImpl();
		return rainSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthlyNormal createMonthlyNormal()
	{
		MonthlyNormalImpl monthlyNormal = new MonthlyNormalImpl();
		return monthlyNormal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClimateStress createClimateStress()
	{
		ClimateStressImpl climateStress = new ClimateStressImpl();
		return climateStress;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SeasonFactor createSeasonFactor()
	{
		SeasonFactorImpl seasonFactor = new SeasonFactorImpl();
		return seasonFactor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public IntensityPoint createIntensityPoint()
	{
		IntensityPointImpl intensityPoint = new IntensityPointImpl();
		return intensityPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Roof createRoof()
	{
		RoofImpl roof = new RoofImpl();
		return roof;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoofDrain createRoofDrain()
	{
		RoofDrainImpl roofDrain = new RoofDrainImpl();
		return roofDrain;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Gutter createGutter()
	{
		GutterImpl gutter = new GutterImpl();
		return gutter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GutterOutlet createGutterOutlet()
	{
		GutterOutletImpl gutterOutlet = new GutterOutletImpl();
		return gutterOutlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Downpipe createDownpipe()
	{
		DownpipeImpl downpipe = new DownpipeImpl();
		return downpipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Screen createScreen()
	{
		ScreenImpl screen = new ScreenImpl();
		return screen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FirstFlushDiverter createFirstFlushDiverter()
	{
		FirstFlushDiverterImpl firstFlushDiverter = new FirstFlushDiverterImpl();
		return firstFlushDiverter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tank createTank()
	{
		TankImpl tank = new TankImpl();
		return tank;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LevelVolumePoint createLevelVolumePoint()
	{
		LevelVolumePointImpl levelVolumePoint = new LevelVolumePointImpl();
		return levelVolumePoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Siting createSiting()
	{
		SitingImpl siting = new SitingImpl();
		return siting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TankLink createTankLink()
	{
		TankLinkImpl tankLink = new TankLinkImpl();
		return tankLink;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Junction createJunction()
	{
		JunctionImpl junction = new JunctionImpl();
		return junction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PipeRun createPipeRun()
	{
		PipeRunImpl pipeRun = new PipeRunImpl();
		return pipeRun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Fitting createFitting()
	{
		FittingImpl fitting = new FittingImpl();
		return fitting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ProfilePoint createProfilePoint()
	{
		ProfilePointImpl profilePoint = new ProfilePointImpl();
		return profilePoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PumpPoint createPumpPoint()
	{
		PumpPointImpl pumpPoint = new PumpPointImpl();
		return pumpPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Pump createPump()
	{
		PumpImpl pump = new PumpImpl();
		return pump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PumpCandidate createPumpCandidate()
	{
		PumpCandidateImpl pumpCandidate = new PumpCandidateImpl();
		return pumpCandidate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SupplyTime createSupplyTime()
	{
		SupplyTimeImpl supplyTime = new SupplyTimeImpl();
		return supplyTime;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureVessel createPressureVessel()
	{
		PressureVesselImpl pressureVessel = new PressureVesselImpl();
		return pressureVessel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tap createTap()
	{
		TapImpl tap = new TapImpl();
		return tap;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UseCalendar createUseCalendar()
	{
		UseCalendarImpl useCalendar = new UseCalendarImpl();
		return useCalendar;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UsePeriod createUsePeriod()
	{
		UsePeriodImpl usePeriod = new UsePeriodImpl();
		return usePeriod;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Holiday createHoliday()
	{
		HolidayImpl holiday = new HolidayImpl();
		return holiday;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Use createUse()
	{
		UseImpl use = new UseImpl();
		return use;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UsePeak createUsePeak()
	{
		UsePeakImpl usePeak = new UsePeakImpl();
		return usePeak;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RationingRule createRationingRule()
	{
		RationingRuleImpl rationingRule = new RationingRuleImpl();
		return rationingRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TopUp createTopUp()
	{
		TopUpImpl topUp = new TopUpImpl();
		return topUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RawWater createRawWater()
	{
		RawWaterImpl rawWater = new RawWaterImpl();
		return rawWater;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PathogenLevel createPathogenLevel()
	{
		PathogenLevelImpl pathogenLevel = new PathogenLevelImpl();
		return pathogenLevel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TreatmentTrain createTreatmentTrain()
	{
		TreatmentTrainImpl treatmentTrain = new TreatmentTrainImpl();
		return treatmentTrain;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TreatmentStep createTreatmentStep()
	{
		TreatmentStepImpl treatmentStep = new TreatmentStepImpl();
		return treatmentStep;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LogReduction createLogReduction()
	{
		LogReductionImpl logReduction = new LogReductionImpl();
		return logReduction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CostItem createCostItem()
	{
		CostItemImpl costItem = new CostItemImpl();
		return costItem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public AlternativeSupply createAlternativeSupply()
	{
		AlternativeSupplyImpl alternativeSupply = new AlternativeSupplyImpl();
		return alternativeSupply;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Economy createEconomy()
	{
		EconomyImpl economy = new EconomyImpl();
		return economy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Option createOption()
	{
		OptionImpl option = new OptionImpl();
		return option;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stage createStage()
	{
		StageImpl stage = new StageImpl();
		return stage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Change createChange()
	{
		ChangeImpl change = new ChangeImpl();
		return change;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UpkeepTask createUpkeepTask()
	{
		UpkeepTaskImpl upkeepTask = new UpkeepTaskImpl();
		return upkeepTask;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SafetyMeasure createSafetyMeasure()
	{
		SafetyMeasureImpl safetyMeasure = new SafetyMeasureImpl();
		return safetyMeasure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Inspection createInspection()
	{
		InspectionImpl inspection = new InspectionImpl();
		return inspection;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public InspectionAnswer createInspectionAnswer()
	{
		InspectionAnswerImpl inspectionAnswer = new InspectionAnswerImpl();
		return inspectionAnswer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reading createReading()
	{
		ReadingImpl reading = new ReadingImpl();
		return reading;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterTest createWaterTest()
	{
		WaterTestImpl waterTest = new WaterTestImpl();
		return waterTest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Incident createIncident()
	{
		IncidentImpl incident = new IncidentImpl();
		return incident;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SharedScheme createSharedScheme()
	{
		SharedSchemeImpl sharedScheme = new SharedSchemeImpl();
		return sharedScheme;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CashEntry createCashEntry()
	{
		CashEntryImpl cashEntry = new CashEntryImpl();
		return cashEntry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Remark createRemark()
	{
		RemarkImpl remark = new RemarkImpl();
		return remark;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExtensionEntry createExtensionEntry()
	{
		ExtensionEntryImpl extensionEntry = new ExtensionEntryImpl();
		return extensionEntry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RainFormat createRainFormatFromString(EDataType eDataType, String initialValue)
	{
		RainFormat result = RainFormat.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRainFormatToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DepthUnit createDepthUnitFromString(EDataType eDataType, String initialValue)
	{
		DepthUnit result = DepthUnit.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDepthUnitToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GapMethod createGapMethodFromString(EDataType eDataType, String initialValue)
	{
		GapMethod result = GapMethod.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGapMethodToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Weekday createWeekdayFromString(EDataType eDataType, String initialValue)
	{
		Weekday result = Weekday.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWeekdayToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RoofMaterial createRoofMaterialFromString(EDataType eDataType, String initialValue)
	{
		RoofMaterial result = RoofMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRoofMaterialToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RunoffBasis createRunoffBasisFromString(EDataType eDataType, String initialValue)
	{
		RunoffBasis result = RunoffBasis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRunoffBasisToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Hazard createHazardFromString(EDataType eDataType, String initialValue)
	{
		Hazard result = Hazard.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHazardToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GutterProfile createGutterProfileFromString(EDataType eDataType, String initialValue)
	{
		GutterProfile result = GutterProfile.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertGutterProfileToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public OutletShape createOutletShapeFromString(EDataType eDataType, String initialValue)
	{
		OutletShape result = OutletShape.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOutletShapeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TankKind createTankKindFromString(EDataType eDataType, String initialValue)
	{
		TankKind result = TankKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTankKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TankMaterial createTankMaterialFromString(EDataType eDataType, String initialValue)
	{
		TankMaterial result = TankMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTankMaterialToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TankCover createTankCoverFromString(EDataType eDataType, String initialValue)
	{
		TankCover result = TankCover.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTankCoverToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PlaceInGround createPlaceInGroundFromString(EDataType eDataType, String initialValue)
	{
		PlaceInGround result = PlaceInGround.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPlaceInGroundToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TankLinkKind createTankLinkKindFromString(EDataType eDataType, String initialValue)
	{
		TankLinkKind result = TankLinkKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTankLinkKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RunUse createRunUseFromString(EDataType eDataType, String initialValue)
	{
		RunUse result = RunUse.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRunUseToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PipeMaterial createPipeMaterialFromString(EDataType eDataType, String initialValue)
	{
		PipeMaterial result = PipeMaterial.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPipeMaterialToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FittingKind createFittingKindFromString(EDataType eDataType, String initialValue)
	{
		FittingKind result = FittingKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFittingKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PumpKind createPumpKindFromString(EDataType eDataType, String initialValue)
	{
		PumpKind result = PumpKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPumpKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PumpArrangement createPumpArrangementFromString(EDataType eDataType, String initialValue)
	{
		PumpArrangement result = PumpArrangement.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPumpArrangementToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public EnergySource createEnergySourceFromString(EDataType eDataType, String initialValue)
	{
		EnergySource result = EnergySource.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertEnergySourceToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TapKind createTapKindFromString(EDataType eDataType, String initialValue)
	{
		TapKind result = TapKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTapKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Purpose createPurposeFromString(EDataType eDataType, String initialValue)
	{
		Purpose result = Purpose.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPurposeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DisinfectantProduct createDisinfectantProductFromString(EDataType eDataType, String initialValue)
	{
		DisinfectantProduct result = DisinfectantProduct.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDisinfectantProductToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StrengthBasis createStrengthBasisFromString(EDataType eDataType, String initialValue)
	{
		StrengthBasis result = StrengthBasis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStrengthBasisToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public StepKind createStepKindFromString(EDataType eDataType, String initialValue)
	{
		StepKind result = StepKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertStepKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RatingBasis createRatingBasisFromString(EDataType eDataType, String initialValue)
	{
		RatingBasis result = RatingBasis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRatingBasisToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PathogenGroup createPathogenGroupFromString(EDataType eDataType, String initialValue)
	{
		PathogenGroup result = PathogenGroup.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPathogenGroupToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CostCategory createCostCategoryFromString(EDataType eDataType, String initialValue)
	{
		CostCategory result = CostCategory.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCostCategoryToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public SupplyKind createSupplyKindFromString(EDataType eDataType, String initialValue)
	{
		SupplyKind result = SupplyKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSupplyKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public PriceBasis createPriceBasisFromString(EDataType eDataType, String initialValue)
	{
		PriceBasis result = PriceBasis.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPriceBasisToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ReadingKind createReadingKindFromString(EDataType eDataType, String initialValue)
	{
		ReadingKind result = ReadingKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertReadingKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public WaterParameter createWaterParameterFromString(EDataType eDataType, String initialValue)
	{
		WaterParameter result = WaterParameter.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertWaterParameterToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public IncidentKind createIncidentKindFromString(EDataType eDataType, String initialValue)
	{
		IncidentKind result = IncidentKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIncidentKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public RemarkKind createRemarkKindFromString(EDataType eDataType, String initialValue)
	{
		RemarkKind result = RemarkKind.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRemarkKindToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ValueType createValueTypeFromString(EDataType eDataType, String initialValue)
	{
		ValueType result = ValueType.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertValueTypeToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public UnitPreference createUnitPreferenceFromString(EDataType eDataType, String initialValue)
	{
		UnitPreference result = UnitPreference.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUnitPreferenceToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TopUpSource createTopUpSourceFromString(EDataType eDataType, String initialValue)
	{
		TopUpSource result = TopUpSource.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTopUpSourceToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public CheckAnswer createCheckAnswerFromString(EDataType eDataType, String initialValue)
	{
		CheckAnswer result = CheckAnswer.get(initialValue);
		if (result == null) throw new IllegalArgumentException("The value '" + initialValue + "' is not a valid enumerator of '" + eDataType.getName() + "'");
		return result;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCheckAnswerToString(EDataType eDataType, Object instanceValue)
	{
		return instanceValue == null ? null : instanceValue.toString();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createLength(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LENGTH).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createLengthFromString(EDataType eDataType, String initialValue)
	{
		return createLength(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLength(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LENGTH).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLengthToString(EDataType eDataType, Object instanceValue)
	{
		return convertLength((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createLevel(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LEVEL).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createLevelFromString(EDataType eDataType, String initialValue)
	{
		return createLevel(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLevel(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LEVEL).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertLevelToString(EDataType eDataType, Object instanceValue)
	{
		return convertLevel((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createBore(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.BORE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createBoreFromString(EDataType eDataType, String initialValue)
	{
		return createBore(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBore(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.BORE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertBoreToString(EDataType eDataType, Object instanceValue)
	{
		return convertBore((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createRainDepth(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RAIN_DEPTH).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createRainDepthFromString(EDataType eDataType, String initialValue)
	{
		return createRainDepth(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRainDepth(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RAIN_DEPTH).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRainDepthToString(EDataType eDataType, Object instanceValue)
	{
		return convertRainDepth((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createParticleSize(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PARTICLE_SIZE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createParticleSizeFromString(EDataType eDataType, String initialValue)
	{
		return createParticleSize(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertParticleSize(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PARTICLE_SIZE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertParticleSizeToString(EDataType eDataType, Object instanceValue)
	{
		return convertParticleSize((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createHead(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HEAD).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createHeadFromString(EDataType eDataType, String initialValue)
	{
		return createHead(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHead(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HEAD).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHeadToString(EDataType eDataType, Object instanceValue)
	{
		return convertHead((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createArea(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.AREA).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createAreaFromString(EDataType eDataType, String initialValue)
	{
		return createArea(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertArea(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.AREA).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAreaToString(EDataType eDataType, Object instanceValue)
	{
		return convertArea((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createOpeningArea(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.OPENING_AREA).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createOpeningAreaFromString(EDataType eDataType, String initialValue)
	{
		return createOpeningArea(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOpeningArea(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.OPENING_AREA).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertOpeningAreaToString(EDataType eDataType, Object instanceValue)
	{
		return convertOpeningArea((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createVolume(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VOLUME).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createVolumeFromString(EDataType eDataType, String initialValue)
	{
		return createVolume(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVolume(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VOLUME).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVolumeToString(EDataType eDataType, Object instanceValue)
	{
		return convertVolume((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createSmallVolume(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SMALL_VOLUME).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createSmallVolumeFromString(EDataType eDataType, String initialValue)
	{
		return createSmallVolume(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSmallVolume(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SMALL_VOLUME).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSmallVolumeToString(EDataType eDataType, Object instanceValue)
	{
		return convertSmallVolume((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createFlow(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.FLOW).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createFlowFromString(EDataType eDataType, String initialValue)
	{
		return createFlow(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlow(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.FLOW).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertFlowToString(EDataType eDataType, Object instanceValue)
	{
		return convertFlow((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createTapFlow(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TAP_FLOW).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createTapFlowFromString(EDataType eDataType, String initialValue)
	{
		return createTapFlow(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTapFlow(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TAP_FLOW).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTapFlowToString(EDataType eDataType, Object instanceValue)
	{
		return convertTapFlow((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createDailyVolume(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAILY_VOLUME).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createDailyVolumeFromString(EDataType eDataType, String initialValue)
	{
		return createDailyVolume(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDailyVolume(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAILY_VOLUME).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDailyVolumeToString(EDataType eDataType, Object instanceValue)
	{
		return convertDailyVolume((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createVelocity(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VELOCITY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createVelocityFromString(EDataType eDataType, String initialValue)
	{
		return createVelocity(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVelocity(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VELOCITY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertVelocityToString(EDataType eDataType, Object instanceValue)
	{
		return convertVelocity((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createPressure(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createPressureFromString(EDataType eDataType, String initialValue)
	{
		return createPressure(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressure(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressureToString(EDataType eDataType, Object instanceValue)
	{
		return convertPressure((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createPressureHead(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE_HEAD).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createPressureHeadFromString(EDataType eDataType, String initialValue)
	{
		return createPressureHead(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressureHead(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE_HEAD).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPressureHeadToString(EDataType eDataType, Object instanceValue)
	{
		return convertPressureHead((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createTemperature(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TEMPERATURE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createTemperatureFromString(EDataType eDataType, String initialValue)
	{
		return createTemperature(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTemperature(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TEMPERATURE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTemperatureToString(EDataType eDataType, Object instanceValue)
	{
		return convertTemperature((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createPower(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.POWER).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createPowerFromString(EDataType eDataType, String initialValue)
	{
		return createPower(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPower(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.POWER).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertPowerToString(EDataType eDataType, Object instanceValue)
	{
		return convertPower((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createSpecificEnergy(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SPECIFIC_ENERGY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createSpecificEnergyFromString(EDataType eDataType, String initialValue)
	{
		return createSpecificEnergy(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSpecificEnergy(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SPECIFIC_ENERGY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSpecificEnergyToString(EDataType eDataType, Object instanceValue)
	{
		return convertSpecificEnergy((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createSeconds(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SECONDS).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createSecondsFromString(EDataType eDataType, String initialValue)
	{
		return createSeconds(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSeconds(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SECONDS).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertSecondsToString(EDataType eDataType, Object instanceValue)
	{
		return convertSeconds((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMinutes(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MINUTES).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMinutesFromString(EDataType eDataType, String initialValue)
	{
		return createMinutes(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMinutes(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MINUTES).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMinutesToString(EDataType eDataType, Object instanceValue)
	{
		return convertMinutes((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createHours(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HOURS).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createHoursFromString(EDataType eDataType, String initialValue)
	{
		return createHours(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHours(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HOURS).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertHoursToString(EDataType eDataType, Object instanceValue)
	{
		return convertHours((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createDays(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAYS).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createDaysFromString(EDataType eDataType, String initialValue)
	{
		return createDays(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDays(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAYS).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDaysToString(EDataType eDataType, Object instanceValue)
	{
		return convertDays((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createYears(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.YEARS).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createYearsFromString(EDataType eDataType, String initialValue)
	{
		return createYears(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertYears(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.YEARS).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertYearsToString(EDataType eDataType, Object instanceValue)
	{
		return convertYears((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createIntensity(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.INTENSITY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createIntensityFromString(EDataType eDataType, String initialValue)
	{
		return createIntensity(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIntensity(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.INTENSITY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertIntensityToString(EDataType eDataType, Object instanceValue)
	{
		return convertIntensity((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createConcentration(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.CONCENTRATION).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createConcentrationFromString(EDataType eDataType, String initialValue)
	{
		return createConcentration(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConcentration(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.CONCENTRATION).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertConcentrationToString(EDataType eDataType, Object instanceValue)
	{
		return convertConcentration((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createUvDose(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UV_DOSE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createUvDoseFromString(EDataType eDataType, String initialValue)
	{
		return createUvDose(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUvDose(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UV_DOSE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUvDoseToString(EDataType eDataType, Object instanceValue)
	{
		return convertUvDose((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createTurbidity(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TURBIDITY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createTurbidityFromString(EDataType eDataType, String initialValue)
	{
		return createTurbidity(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTurbidity(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TURBIDITY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTurbidityToString(EDataType eDataType, Object instanceValue)
	{
		return convertTurbidity((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createDensity(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DENSITY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createDensityFromString(EDataType eDataType, String initialValue)
	{
		return createDensity(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDensity(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DENSITY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDensityToString(EDataType eDataType, Object instanceValue)
	{
		return convertDensity((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMass(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MASS).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMassFromString(EDataType eDataType, String initialValue)
	{
		return createMass(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMass(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MASS).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMassToString(EDataType eDataType, Object instanceValue)
	{
		return convertMass((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createRotationalSpeed(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ROTATIONAL_SPEED).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createRotationalSpeedFromString(EDataType eDataType, String initialValue)
	{
		return createRotationalSpeed(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRotationalSpeed(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ROTATIONAL_SPEED).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRotationalSpeedToString(EDataType eDataType, Object instanceValue)
	{
		return convertRotationalSpeed((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createAngle(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ANGLE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createAngleFromString(EDataType eDataType, String initialValue)
	{
		return createAngle(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAngle(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ANGLE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertAngleToString(EDataType eDataType, Object instanceValue)
	{
		return convertAngle((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createRate(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RATE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createRateFromString(EDataType eDataType, String initialValue)
	{
		return createRate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRate(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RATE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertRateToString(EDataType eDataType, Object instanceValue)
	{
		return convertRate((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMoney(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MONEY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMoneyFromString(EDataType eDataType, String initialValue)
	{
		return createMoney(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMoney(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MONEY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMoneyToString(EDataType eDataType, Object instanceValue)
	{
		return convertMoney((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createUnitCost(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UNIT_COST).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createUnitCostFromString(EDataType eDataType, String initialValue)
	{
		return createUnitCost(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUnitCost(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UNIT_COST).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertUnitCostToString(EDataType eDataType, Object instanceValue)
	{
		return convertUnitCost((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createEnergyCost(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ENERGY_COST).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createEnergyCostFromString(EDataType eDataType, String initialValue)
	{
		return createEnergyCost(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertEnergyCost(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ENERGY_COST).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertEnergyCostToString(EDataType eDataType, Object instanceValue)
	{
		return convertEnergyCost((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createCoefficient(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.COEFFICIENT).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createCoefficientFromString(EDataType eDataType, String initialValue)
	{
		return createCoefficient(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCoefficient(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.COEFFICIENT).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertCoefficientToString(EDataType eDataType, Object instanceValue)
	{
		return convertCoefficient((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createShare(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SHARE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createShareFromString(EDataType eDataType, String initialValue)
	{
		return createShare(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertShare(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SHARE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertShareToString(EDataType eDataType, Object instanceValue)
	{
		return convertShare((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMeasurement(final String it)
	{
		return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MEASUREMENT).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Quantity createMeasurementFromString(EDataType eDataType, String initialValue)
	{
		return createMeasurement(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMeasurement(final Quantity it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MEASUREMENT).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertMeasurementToString(EDataType eDataType, Object instanceValue)
	{
		return convertMeasurement((Quantity)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDate(final String it)
	{
		return (java.time.LocalDate) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DATE).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalDate createDateFromString(EDataType eDataType, String initialValue)
	{
		return createDate(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDate(final LocalDate it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DATE).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDateToString(EDataType eDataType, Object instanceValue)
	{
		return convertDate((LocalDate)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MonthDay createDayOfYear(final String it)
	{
		return (java.time.MonthDay) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAY_OF_YEAR).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public MonthDay createDayOfYearFromString(EDataType eDataType, String initialValue)
	{
		return createDayOfYear(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDayOfYear(final MonthDay it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAY_OF_YEAR).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertDayOfYearToString(EDataType eDataType, Object instanceValue)
	{
		return convertDayOfYear((MonthDay)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalTime createTimeOfDay(final String it)
	{
		return (java.time.LocalTime) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TIME_OF_DAY).createFromString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public LocalTime createTimeOfDayFromString(EDataType eDataType, String initialValue)
	{
		return createTimeOfDay(initialValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTimeOfDay(final LocalTime it)
	{
		return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TIME_OF_DAY).convertToString(it);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public String convertTimeOfDayToString(EDataType eDataType, Object instanceValue)
	{
		return convertTimeOfDay((LocalTime)instanceValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SitePackage getSitePackage()
	{
		return (SitePackage)getEPackage();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @deprecated
	 * @generated
	 */
	@Deprecated
	public static SitePackage getPackage()
	{
		return SitePackage.eINSTANCE;
	}

} //SiteFactoryImpl

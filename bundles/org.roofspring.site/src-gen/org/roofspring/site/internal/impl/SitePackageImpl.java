/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

import org.eclipse.emf.ecore.impl.EPackageImpl;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.AlternativeSupply;
import org.roofspring.site.CashEntry;
import org.roofspring.site.Change;
import org.roofspring.site.CheckAnswer;
import org.roofspring.site.ClimateStress;
import org.roofspring.site.Component;
import org.roofspring.site.Conduit;
import org.roofspring.site.CostCategory;
import org.roofspring.site.CostItem;
import org.roofspring.site.DepthUnit;
import org.roofspring.site.DisinfectantProduct;
import org.roofspring.site.Downpipe;
import org.roofspring.site.Economy;
import org.roofspring.site.Element;
import org.roofspring.site.EnergySource;
import org.roofspring.site.ExtensionEntry;
import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.Fitting;
import org.roofspring.site.FittingKind;
import org.roofspring.site.GapMethod;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.GutterProfile;
import org.roofspring.site.Hazard;
import org.roofspring.site.Holiday;
import org.roofspring.site.Incident;
import org.roofspring.site.IncidentKind;
import org.roofspring.site.Inspection;
import org.roofspring.site.InspectionAnswer;
import org.roofspring.site.IntensityPoint;
import org.roofspring.site.Junction;
import org.roofspring.site.LevelVolumePoint;
import org.roofspring.site.LogReduction;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Option;
import org.roofspring.site.OutletShape;
import org.roofspring.site.PathogenGroup;
import org.roofspring.site.PathogenLevel;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.PriceBasis;
import org.roofspring.site.ProfilePoint;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpArrangement;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpKind;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.Purpose;
import org.roofspring.site.RainFormat;
import org.roofspring.site.RainSource;
import org.roofspring.site.RatingBasis;
import org.roofspring.site.RationingRule;
import org.roofspring.site.RawWater;
import org.roofspring.site.Reading;
import org.roofspring.site.ReadingKind;
import org.roofspring.site.Receiver;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.Row;
import org.roofspring.site.RunUse;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.SafetyMeasure;
import org.roofspring.site.Screen;
import org.roofspring.site.SeasonFactor;
import org.roofspring.site.SharedScheme;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Siting;
import org.roofspring.site.Stage;
import org.roofspring.site.StepKind;
import org.roofspring.site.StrengthBasis;
import org.roofspring.site.SupplyKind;
import org.roofspring.site.SupplyTime;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankKind;
import org.roofspring.site.TankLink;
import org.roofspring.site.TankLinkKind;
import org.roofspring.site.TankMaterial;
import org.roofspring.site.Tap;
import org.roofspring.site.TapKind;
import org.roofspring.site.Target;
import org.roofspring.site.TopUp;
import org.roofspring.site.TopUpSource;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.UnitPreference;
import org.roofspring.site.UpkeepTask;
import org.roofspring.site.Use;
import org.roofspring.site.UseCalendar;
import org.roofspring.site.UsePeak;
import org.roofspring.site.UsePeriod;
import org.roofspring.site.ValueType;
import org.roofspring.site.WaterParameter;
import org.roofspring.site.WaterTest;
import org.roofspring.site.Weekday;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model <b>Package</b>.
 * <!-- end-user-doc -->
 * @generated
 */
public class SitePackageImpl extends EPackageImpl implements SitePackage
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rowEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass elementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass namedElementEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass componentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass receiverEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass conduitEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pipeNodeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass siteEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass targetEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rainSourceEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass monthlyNormalEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass climateStressEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass seasonFactorEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass intensityPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roofEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass roofDrainEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass gutterEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass gutterOutletEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass downpipeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass screenEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass firstFlushDiverterEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass tankEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass levelVolumePointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sitingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass tankLinkEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass junctionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pipeRunEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass fittingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass profilePointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pumpDataEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pumpPointEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pumpEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pumpCandidateEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass supplyTimeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pressureVesselEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass tapEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass useCalendarEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass usePeriodEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass holidayEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass useEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass usePeakEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rationingRuleEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass topUpEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass rawWaterEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass pathogenLevelEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass treatmentTrainEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass treatmentStepEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass logReductionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass costItemEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass alternativeSupplyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass economyEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass optionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass stageEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass changeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass upkeepTaskEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass safetyMeasureEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass inspectionEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass inspectionAnswerEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass readingEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass waterTestEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass incidentEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass sharedSchemeEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass cashEntryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass remarkEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EClass extensionEntryEClass = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum rainFormatEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum depthUnitEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum gapMethodEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum weekdayEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum roofMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum runoffBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum hazardEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum gutterProfileEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum outletShapeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tankKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tankMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tankCoverEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum placeInGroundEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tankLinkKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum runUseEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pipeMaterialEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum fittingKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pumpKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pumpArrangementEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum energySourceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum tapKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum purposeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum disinfectantProductEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum strengthBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum stepKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum ratingBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum pathogenGroupEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum costCategoryEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum supplyKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum priceBasisEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum readingKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum waterParameterEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum incidentKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum remarkKindEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum valueTypeEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum unitPreferenceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum topUpSourceEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EEnum checkAnswerEEnum = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType lengthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType levelEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType boreEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType rainDepthEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType particleSizeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType headEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType areaEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType openingAreaEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType volumeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType smallVolumeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType flowEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType tapFlowEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dailyVolumeEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType velocityEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType pressureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType pressureHeadEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType temperatureEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType powerEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType specificEnergyEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType secondsEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType minutesEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType hoursEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType daysEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType yearsEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType intensityEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType concentrationEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType uvDoseEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType turbidityEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType densityEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType massEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType rotationalSpeedEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType angleEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType rateEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType moneyEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType unitCostEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType energyCostEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType coefficientEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType shareEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType measurementEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dateEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType dayOfYearEDataType = null;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private EDataType timeOfDayEDataType = null;

	/**
	 * Creates an instance of the model <b>Package</b>, registered with
	 * {@link org.eclipse.emf.ecore.EPackage.Registry EPackage.Registry} by the package
	 * package URI value.
	 * <p>Note: the correct way to create the package is via the static
	 * factory method {@link #init init()}, which also performs
	 * initialization of the package, or returns the registered package,
	 * if one already exists.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.eclipse.emf.ecore.EPackage.Registry
	 * @see org.roofspring.site.SitePackage#eNS_URI
	 * @see #init()
	 * @generated
	 */
	private SitePackageImpl()
	{
		super(eNS_URI, SiteFactory.eINSTANCE);
	}
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static boolean isInited = false;

	/**
	 * Creates, registers, and initializes the <b>Package</b> for this model, and for any others upon which it depends.
	 *
	 * <p>This method is used to initialize {@link SitePackage#eINSTANCE} when that field is accessed.
	 * Clients should not invoke it directly. Instead, they should simply access that field to obtain the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #eNS_URI
	 * @see #createPackageContents()
	 * @see #initializePackageContents()
	 * @generated
	 */
	public static SitePackage init()
	{
		if (isInited) return (SitePackage)EPackage.Registry.INSTANCE.getEPackage(SitePackage.eNS_URI);

		// Obtain or create and register package
		Object registeredSitePackage = EPackage.Registry.INSTANCE.get(eNS_URI);
		SitePackageImpl theSitePackage = registeredSitePackage instanceof SitePackageImpl ? (SitePackageImpl)registeredSitePackage : new SitePackageImpl();

		isInited = true;

		// Create package meta-data objects
		theSitePackage.createPackageContents();

		// Initialize created meta-data
		theSitePackage.initializePackageContents();

		// Mark meta-data to indicate it can't be changed
		theSitePackage.freeze();

		// Update the registry and return the package
		EPackage.Registry.INSTANCE.put(SitePackage.eNS_URI, theSitePackage);
		return theSitePackage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRow()
	{
		return rowEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getElement()
	{
		return elementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElement_Id()
	{
		return (EAttribute)elementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getElement_Note()
	{
		return (EAttribute)elementEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getNamedElement()
	{
		return namedElementEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getNamedElement_Name()
	{
		return (EAttribute)namedElementEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getComponent()
	{
		return componentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComponent_InUse()
	{
		return (EAttribute)componentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComponent_Installed()
	{
		return (EAttribute)componentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getComponent_DrawingPlace()
	{
		return (EAttribute)componentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReceiver()
	{
		return receiverEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getConduit()
	{
		return conduitEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getConduit_DrainsTo()
	{
		return (EReference)conduitEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPipeNode()
	{
		return pipeNodeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSite()
	{
		return siteEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_SchemaVersion()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Place()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Latitude()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Altitude()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_WaterTemperatureMin()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_WaterTemperatureUsual()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_WaterTemperatureMax()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Currency()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_PreferredUnits()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Author()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Client()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSite_Created()
	{
		return (EAttribute)siteEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Rain()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Target()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Roofs()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Gutters()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Downpipes()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Screens()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Diverters()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Tanks()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_TankLinks()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Junctions()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_PipeRuns()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Pumps()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_PressureVessels()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Taps()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Calendars()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Uses()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Rationing()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_TopUps()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_RawWater()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Trains()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Costs()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Alternatives()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(33);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Economy()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(34);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Stages()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(35);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Options()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(36);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Upkeep()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(37);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_SafetyPlan()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(38);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Inspections()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(39);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Readings()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(40);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_WaterTests()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(41);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Incidents()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(42);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Scheme()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(43);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Remarks()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(44);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSite_Extensions()
	{
		return (EReference)siteEClass.getEStructuralFeatures().get(45);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTarget()
	{
		return targetEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_TimeReliability()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_VolumetricReliability()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_LongestShortage()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Reserve()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_PumpOutage()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Confidence()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_Budget()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_InfectionTarget()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTarget_BurdenTarget()
	{
		return (EAttribute)targetEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRainSource()
	{
		return rainSourceEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_File()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_Format()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DateColumn()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DepthColumn()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DatePattern()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_Delimiter()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DecimalComma()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DepthUnit()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_GapMethod()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_FirstDay()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_LastDay()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_Station()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_StationAltitude()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_Distance()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DonorFile()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DonorStation()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_ScaleToNormals()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRainSource_Normals()
	{
		return (EReference)rainSourceEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_Synthesize()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_SyntheticYears()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_Seed()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRainSource_Stress()
	{
		return (EReference)rainSourceEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRainSource_Intensities()
	{
		return (EReference)rainSourceEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_ReturnPeriod()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_PeakDuration()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DayToShortRatio()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRainSource_DayFactor()
	{
		return (EAttribute)rainSourceEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getMonthlyNormal()
	{
		return monthlyNormalEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMonthlyNormal_Month()
	{
		return (EAttribute)monthlyNormalEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMonthlyNormal_Depth()
	{
		return (EAttribute)monthlyNormalEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMonthlyNormal_WetDays()
	{
		return (EAttribute)monthlyNormalEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getMonthlyNormal_Evaporation()
	{
		return (EAttribute)monthlyNormalEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getClimateStress()
	{
		return climateStressEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClimateStress_DepthFactor()
	{
		return (EAttribute)climateStressEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getClimateStress_DrySeasonLonger()
	{
		return (EAttribute)climateStressEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getClimateStress_Seasons()
	{
		return (EReference)climateStressEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSeasonFactor()
	{
		return seasonFactorEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeasonFactor_From()
	{
		return (EAttribute)seasonFactorEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeasonFactor_To()
	{
		return (EAttribute)seasonFactorEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSeasonFactor_Factor()
	{
		return (EAttribute)seasonFactorEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getIntensityPoint()
	{
		return intensityPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIntensityPoint_Duration()
	{
		return (EAttribute)intensityPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIntensityPoint_ReturnPeriod()
	{
		return (EAttribute)intensityPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIntensityPoint_Intensity()
	{
		return (EAttribute)intensityPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRoof()
	{
		return roofEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_PlanArea()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_Pitch()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_EavesLength()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_SlopeHeight()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_EavesLevel()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_Material()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_RunoffCoefficient()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_RunoffBasis()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_InitialLoss()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_CollectionEfficiency()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_PeakRunoff()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_Hazards()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoof_Age()
	{
		return (EAttribute)roofEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoof_Drains()
	{
		return (EReference)roofEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRoofDrain()
	{
		return roofDrainEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRoofDrain_To()
	{
		return (EReference)roofDrainEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRoofDrain_Share()
	{
		return (EAttribute)roofDrainEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGutter()
	{
		return gutterEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Profile()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Width()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_SoleWidth()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Depth()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Freeboard()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Length()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Slope()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Roughness()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Level()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_Bends()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_LeafGuard()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutter_LastCleaned()
	{
		return (EAttribute)gutterEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGutter_Outlets()
	{
		return (EReference)gutterEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getGutterOutlet()
	{
		return gutterOutletEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutterOutlet_Position()
	{
		return (EAttribute)gutterOutletEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutterOutlet_Shape()
	{
		return (EAttribute)gutterOutletEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutterOutlet_Diameter()
	{
		return (EAttribute)gutterOutletEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getGutterOutlet_Strainer()
	{
		return (EAttribute)gutterOutletEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getGutterOutlet_To()
	{
		return (EReference)gutterOutletEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getDownpipe()
	{
		return downpipeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDownpipe_Bore()
	{
		return (EAttribute)downpipeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDownpipe_Length()
	{
		return (EAttribute)downpipeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDownpipe_FillShare()
	{
		return (EAttribute)downpipeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getDownpipe_Wet()
	{
		return (EAttribute)downpipeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getScreen()
	{
		return screenEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreen_Mesh()
	{
		return (EAttribute)screenEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreen_Area()
	{
		return (EAttribute)screenEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreen_OpenShare()
	{
		return (EAttribute)screenEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreen_BlockedShare()
	{
		return (EAttribute)screenEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreen_LostShare()
	{
		return (EAttribute)screenEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getScreen_RimHeight()
	{
		return (EAttribute)screenEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFirstFlushDiverter()
	{
		return firstFlushDiverterEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFirstFlushDiverter_Depth()
	{
		return (EAttribute)firstFlushDiverterEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFirstFlushDiverter_Volume()
	{
		return (EAttribute)firstFlushDiverterEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFirstFlushDiverter_ResetDryDays()
	{
		return (EAttribute)firstFlushDiverterEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFirstFlushDiverter_DrainTime()
	{
		return (EAttribute)firstFlushDiverterEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFirstFlushDiverter_DrainOrifice()
	{
		return (EAttribute)firstFlushDiverterEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFirstFlushDiverter_Height()
	{
		return (EAttribute)firstFlushDiverterEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTank()
	{
		return tankEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Kind()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Capacity()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_DeadVolume()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_ReserveVolume()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_BaseLevel()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Height()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_OutletHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_ReserveOutletHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_OverflowHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_InletHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTank_LevelVolume()
	{
		return (EReference)tankEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_StartHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_StopHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_CurrentHeight()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_CurrentDate()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_PlaceInGround()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Cover()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Material()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Diameter()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Length()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Width()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_OpenArea()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_EvaporationFactor()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_Leakage()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_OverflowDiameter()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTank_OverflowsTo()
	{
		return (EReference)tankEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_VentArea()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_ScreenMesh()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_FloatingIntake()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_CalmedInlet()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_LockedHatch()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTank_LastCleaned()
	{
		return (EAttribute)tankEClass.getEStructuralFeatures().get(31);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTank_Siting()
	{
		return (EReference)tankEClass.getEStructuralFeatures().get(32);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLevelVolumePoint()
	{
		return levelVolumePointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLevelVolumePoint_Height()
	{
		return (EAttribute)levelVolumePointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLevelVolumePoint_Volume()
	{
		return (EAttribute)levelVolumePointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSiting()
	{
		return sitingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_LatrineDistance()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_LatrineUphill()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_RefuseDistance()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_GroundwaterDepth()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_BurialDepth()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_BaseArea()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_EmptyMass()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_SoilCover()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_AllowedBearing()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_StandHeight()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_FoundationDistance()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_Soakaway()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_SoakawayLength()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_SoakawayWidth()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_SoakawayDepth()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_SoakawayVoids()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_Infiltration()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSiting_TapDrain()
	{
		return (EAttribute)sitingEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTankLink()
	{
		return tankLinkEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTankLink_Kind()
	{
		return (EAttribute)tankLinkEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTankLink_From()
	{
		return (EReference)tankLinkEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTankLink_To()
	{
		return (EReference)tankLinkEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTankLink_SillHeight()
	{
		return (EAttribute)tankLinkEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTankLink_MaxFlow()
	{
		return (EAttribute)tankLinkEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTankLink_DailyVolume()
	{
		return (EAttribute)tankLinkEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getJunction()
	{
		return junctionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getJunction_Level()
	{
		return (EAttribute)junctionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPipeRun()
	{
		return pipeRunEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_Use()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPipeRun_From()
	{
		return (EReference)pipeRunEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPipeRun_To()
	{
		return (EReference)pipeRunEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_Bore()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_Length()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_Material()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_WallThickness()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_ClosureTime()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_PressureClass()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_Roughness()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPipeRun_AgedRoughness()
	{
		return (EAttribute)pipeRunEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPipeRun_Fittings()
	{
		return (EReference)pipeRunEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPipeRun_Profile()
	{
		return (EReference)pipeRunEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getFitting()
	{
		return fittingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitting_Kind()
	{
		return (EAttribute)fittingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitting_Count()
	{
		return (EAttribute)fittingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getFitting_LossCoefficient()
	{
		return (EAttribute)fittingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getProfilePoint()
	{
		return profilePointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProfilePoint_Distance()
	{
		return (EAttribute)profilePointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getProfilePoint_Level()
	{
		return (EAttribute)profilePointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPumpData()
	{
		return pumpDataEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPumpData_Points()
	{
		return (EReference)pumpDataEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_MotorEfficiency()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_RatedSpeed()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_RatedPower()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_DischargeBore()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_MinSubmergence()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_MaxStarts()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_Price()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpData_DataSource()
	{
		return (EAttribute)pumpDataEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPumpPoint()
	{
		return pumpPointEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpPoint_Flow()
	{
		return (EAttribute)pumpPointEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpPoint_Head()
	{
		return (EAttribute)pumpPointEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpPoint_Efficiency()
	{
		return (EAttribute)pumpPointEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpPoint_NpshRequired()
	{
		return (EAttribute)pumpPointEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpPoint_InputPower()
	{
		return (EAttribute)pumpPointEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPump()
	{
		return pumpEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_Kind()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_Count()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_Arrangement()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_Level()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_SpeedRatio()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_CutOutHeight()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_FootValve()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_EnergySource()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPump_SupplyTimes()
	{
		return (EReference)pumpEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_OutageShare()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_StrokeVolume()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPump_StrokesPerMinute()
	{
		return (EAttribute)pumpEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getPump_Candidates()
	{
		return (EReference)pumpEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPumpCandidate()
	{
		return pumpCandidateEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpCandidate_Model()
	{
		return (EAttribute)pumpCandidateEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPumpCandidate_Chosen()
	{
		return (EAttribute)pumpCandidateEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSupplyTime()
	{
		return supplyTimeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSupplyTime_From()
	{
		return (EAttribute)supplyTimeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSupplyTime_To()
	{
		return (EAttribute)supplyTimeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSupplyTime_Weekdays()
	{
		return (EAttribute)supplyTimeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPressureVessel()
	{
		return pressureVesselEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressureVessel_Volume()
	{
		return (EAttribute)pressureVesselEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressureVessel_Precharge()
	{
		return (EAttribute)pressureVesselEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressureVessel_CutIn()
	{
		return (EAttribute)pressureVesselEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressureVessel_CutOut()
	{
		return (EAttribute)pressureVesselEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPressureVessel_Level()
	{
		return (EAttribute)pressureVesselEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTap()
	{
		return tapEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_Kind()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_Level()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_MinimumHead()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_DesignFlow()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_Orifice()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_LossCoefficient()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_Count()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_OpenTogether()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTap_WalkingDistance()
	{
		return (EAttribute)tapEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUseCalendar()
	{
		return useCalendarEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUseCalendar_Periods()
	{
		return (EReference)useCalendarEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUseCalendar_Weekdays()
	{
		return (EAttribute)useCalendarEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUseCalendar_Holidays()
	{
		return (EReference)useCalendarEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUsePeriod()
	{
		return usePeriodEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeriod_Name()
	{
		return (EAttribute)usePeriodEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeriod_From()
	{
		return (EAttribute)usePeriodEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeriod_To()
	{
		return (EAttribute)usePeriodEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeriod_Factor()
	{
		return (EAttribute)usePeriodEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getHoliday()
	{
		return holidayEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoliday_Name()
	{
		return (EAttribute)holidayEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoliday_From()
	{
		return (EAttribute)holidayEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoliday_To()
	{
		return (EAttribute)holidayEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getHoliday_Factor()
	{
		return (EAttribute)holidayEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUse()
	{
		return useEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_Purpose()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_Consumers()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_Count()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_AmountEach()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_Priority()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_Vulnerable()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUse_Calendar()
	{
		return (EReference)useEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUse_Taps()
	{
		return (EReference)useEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUse_Tank()
	{
		return (EReference)useEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUse_Train()
	{
		return (EReference)useEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUse_Peaks()
	{
		return (EReference)useEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUse_Containers()
	{
		return (EAttribute)useEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUsePeak()
	{
		return usePeakEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeak_From()
	{
		return (EAttribute)usePeakEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeak_To()
	{
		return (EAttribute)usePeakEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUsePeak_Share()
	{
		return (EAttribute)usePeakEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRationingRule()
	{
		return rationingRuleEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRationingRule_Tank()
	{
		return (EReference)rationingRuleEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRationingRule_Below()
	{
		return (EAttribute)rationingRuleEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRationingRule_Uses()
	{
		return (EReference)rationingRuleEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRationingRule_Allowed()
	{
		return (EAttribute)rationingRuleEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRationingRule_From()
	{
		return (EAttribute)rationingRuleEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRationingRule_To()
	{
		return (EAttribute)rationingRuleEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTopUp()
	{
		return topUpEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTopUp_Source()
	{
		return (EAttribute)topUpEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTopUp_Tank()
	{
		return (EReference)topUpEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTopUp_Load()
	{
		return (EAttribute)topUpEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTopUp_OrderBelow()
	{
		return (EAttribute)topUpEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTopUp_Delay()
	{
		return (EAttribute)topUpEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTopUp_Price()
	{
		return (EAttribute)topUpEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTopUp_MostPerYear()
	{
		return (EAttribute)topUpEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRawWater()
	{
		return rawWaterEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWater_Tested()
	{
		return (EAttribute)rawWaterEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWater_Turbidity()
	{
		return (EAttribute)rawWaterEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWater_Ph()
	{
		return (EAttribute)rawWaterEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWater_Alkalinity()
	{
		return (EAttribute)rawWaterEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWater_ChlorineDemand()
	{
		return (EAttribute)rawWaterEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRawWater_Source()
	{
		return (EAttribute)rawWaterEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRawWater_Pathogens()
	{
		return (EReference)rawWaterEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getPathogenLevel()
	{
		return pathogenLevelEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPathogenLevel_Group()
	{
		return (EAttribute)pathogenLevelEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPathogenLevel_Pathogen()
	{
		return (EAttribute)pathogenLevelEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPathogenLevel_PerLitre()
	{
		return (EAttribute)pathogenLevelEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPathogenLevel_Low()
	{
		return (EAttribute)pathogenLevelEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPathogenLevel_High()
	{
		return (EAttribute)pathogenLevelEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getPathogenLevel_Source()
	{
		return (EAttribute)pathogenLevelEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTreatmentTrain()
	{
		return treatmentTrainEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentTrain_Level()
	{
		return (EAttribute)treatmentTrainEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentTrain_DesignFlow()
	{
		return (EAttribute)treatmentTrainEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentTrain_Batch()
	{
		return (EAttribute)treatmentTrainEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTreatmentTrain_Steps()
	{
		return (EReference)treatmentTrainEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getTreatmentStep()
	{
		return treatmentStepEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Kind()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Active()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Rating()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_RatingBasis()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getTreatmentStep_Reductions()
	{
		return (EReference)treatmentStepEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Availability()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_MaxFlow()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_HeadLossClean()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_HeadLossFouled()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ReferenceFlow()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ChangeInterval()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ChangeVolume()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ChangeCost()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_LastChanged()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(13);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_MaxTurbidity()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(14);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_EnergySource()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(15);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Power()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(16);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_UvDose()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(17);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Validated()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(18);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Product()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(19);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Strength()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(20);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_StrengthBasis()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(21);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ProductDensity()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(22);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ProductAge()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(23);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Dose()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(24);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Residual()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(25);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ResidualDate()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(26);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ContactVolume()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(27);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_ContactTime()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(28);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_Baffling()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(29);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getTreatmentStep_BatchVolume()
	{
		return (EAttribute)treatmentStepEClass.getEStructuralFeatures().get(30);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getLogReduction()
	{
		return logReductionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLogReduction_Group()
	{
		return (EAttribute)logReductionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLogReduction_Low()
	{
		return (EAttribute)logReductionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLogReduction_High()
	{
		return (EAttribute)logReductionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getLogReduction_Source()
	{
		return (EAttribute)logReductionEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCostItem()
	{
		return costItemEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Category()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Amount()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Quantity()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Unit()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getCostItem_Element()
	{
		return (EReference)costItemEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_FirstYear()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Interval()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Life()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_YearlyChange()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCostItem_Person()
	{
		return (EAttribute)costItemEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getAlternativeSupply()
	{
		return alternativeSupplyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_Kind()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_Price()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_Capital()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_CapitalLife()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_YearlyCost()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_Energy()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_Reliability()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getAlternativeSupply_Source()
	{
		return (EAttribute)alternativeSupplyEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getEconomy()
	{
		return economyEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_Basis()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_DiscountRate()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_Inflation()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_Horizon()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_BaseYear()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_EnergyPrice()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_LabourPrice()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_Tariff()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getEconomy_People()
	{
		return (EAttribute)economyEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getOption()
	{
		return optionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOption_Active()
	{
		return (EAttribute)optionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getOption_Reason()
	{
		return (EAttribute)optionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getOption_Changes()
	{
		return (EReference)optionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getStage()
	{
		return stageEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStage_Date()
	{
		return (EAttribute)stageEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getStage_Budget()
	{
		return (EAttribute)stageEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getChange()
	{
		return changeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getChange_Element()
	{
		return (EReference)changeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getChange_Feature()
	{
		return (EAttribute)changeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getChange_Value()
	{
		return (EAttribute)changeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getUpkeepTask()
	{
		return upkeepTaskEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getUpkeepTask_Elements()
	{
		return (EReference)upkeepTaskEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Interval()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_DueOn()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_AfterVolume()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_BeforeFirstRain()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_LastDone()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Effort()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Cost()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Who()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Checklist()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Spares()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(10);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Source()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(11);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getUpkeepTask_Hazard()
	{
		return (EAttribute)upkeepTaskEClass.getEStructuralFeatures().get(12);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSafetyMeasure()
	{
		return safetyMeasureEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSafetyMeasure_Element()
	{
		return (EReference)safetyMeasureEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSafetyMeasure_Hazard()
	{
		return (EAttribute)safetyMeasureEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSafetyMeasure_Control()
	{
		return (EAttribute)safetyMeasureEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSafetyMeasure_Limit()
	{
		return (EAttribute)safetyMeasureEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSafetyMeasure_Check()
	{
		return (EAttribute)safetyMeasureEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSafetyMeasure_Action()
	{
		return (EAttribute)safetyMeasureEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSafetyMeasure_Who()
	{
		return (EAttribute)safetyMeasureEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInspection()
	{
		return inspectionEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_Date()
	{
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspection_Inspector()
	{
		return (EAttribute)inspectionEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getInspection_Answers()
	{
		return (EReference)inspectionEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getInspectionAnswer()
	{
		return inspectionAnswerEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_Question()
	{
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_Answer()
	{
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getInspectionAnswer_Remark()
	{
		return (EAttribute)inspectionAnswerEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getReading()
	{
		return readingEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Date()
	{
		return (EAttribute)readingEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Time()
	{
		return (EAttribute)readingEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Kind()
	{
		return (EAttribute)readingEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Value()
	{
		return (EAttribute)readingEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getReading_Element()
	{
		return (EReference)readingEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getReading_Reader()
	{
		return (EAttribute)readingEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getWaterTest()
	{
		return waterTestEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Date()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Parameter()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Value()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_BelowDetection()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Unit()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Limit()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_LimitSource()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Laboratory()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getWaterTest_Element()
	{
		return (EReference)waterTestEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getWaterTest_Action()
	{
		return (EAttribute)waterTestEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getIncident()
	{
		return incidentEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIncident_Kind()
	{
		return (EAttribute)incidentEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIncident_From()
	{
		return (EAttribute)incidentEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIncident_To()
	{
		return (EAttribute)incidentEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getIncident_Element()
	{
		return (EReference)incidentEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIncident_VolumeLost()
	{
		return (EAttribute)incidentEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getIncident_Action()
	{
		return (EAttribute)incidentEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getSharedScheme()
	{
		return sharedSchemeEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSharedScheme_Families()
	{
		return (EAttribute)sharedSchemeEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSharedScheme_PeoplePerFamily()
	{
		return (EAttribute)sharedSchemeEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSharedScheme_KeyHolder()
	{
		return (EAttribute)sharedSchemeEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSharedScheme_Ration()
	{
		return (EAttribute)sharedSchemeEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSharedScheme_MonthlyFee()
	{
		return (EAttribute)sharedSchemeEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getSharedScheme_NightLoss()
	{
		return (EAttribute)sharedSchemeEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getSharedScheme_CashBook()
	{
		return (EReference)sharedSchemeEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getCashEntry()
	{
		return cashEntryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCashEntry_Date()
	{
		return (EAttribute)cashEntryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCashEntry_Amount()
	{
		return (EAttribute)cashEntryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCashEntry_What()
	{
		return (EAttribute)cashEntryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getCashEntry_Who()
	{
		return (EAttribute)cashEntryEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getRemark()
	{
		return remarkEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Kind()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRemark_Element()
	{
		return (EReference)remarkEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Author()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Role()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Date()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Text()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Fingerprint()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(6);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_RestsOn()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(7);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getRemark_Settled()
	{
		return (EAttribute)remarkEClass.getEStructuralFeatures().get(8);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getRemark_Replies()
	{
		return (EReference)remarkEClass.getEStructuralFeatures().get(9);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EClass getExtensionEntry()
	{
		return extensionEntryEClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtensionEntry_Plugin()
	{
		return (EAttribute)extensionEntryEClass.getEStructuralFeatures().get(0);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtensionEntry_Schema()
	{
		return (EAttribute)extensionEntryEClass.getEStructuralFeatures().get(1);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtensionEntry_Key()
	{
		return (EAttribute)extensionEntryEClass.getEStructuralFeatures().get(2);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtensionEntry_Type()
	{
		return (EAttribute)extensionEntryEClass.getEStructuralFeatures().get(3);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EAttribute getExtensionEntry_Value()
	{
		return (EAttribute)extensionEntryEClass.getEStructuralFeatures().get(4);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EReference getExtensionEntry_Element()
	{
		return (EReference)extensionEntryEClass.getEStructuralFeatures().get(5);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRainFormat()
	{
		return rainFormatEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDepthUnit()
	{
		return depthUnitEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGapMethod()
	{
		return gapMethodEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWeekday()
	{
		return weekdayEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRoofMaterial()
	{
		return roofMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRunoffBasis()
	{
		return runoffBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getHazard()
	{
		return hazardEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getGutterProfile()
	{
		return gutterProfileEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getOutletShape()
	{
		return outletShapeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTankKind()
	{
		return tankKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTankMaterial()
	{
		return tankMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTankCover()
	{
		return tankCoverEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPlaceInGround()
	{
		return placeInGroundEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTankLinkKind()
	{
		return tankLinkKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRunUse()
	{
		return runUseEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPipeMaterial()
	{
		return pipeMaterialEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getFittingKind()
	{
		return fittingKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPumpKind()
	{
		return pumpKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPumpArrangement()
	{
		return pumpArrangementEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getEnergySource()
	{
		return energySourceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTapKind()
	{
		return tapKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPurpose()
	{
		return purposeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getDisinfectantProduct()
	{
		return disinfectantProductEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStrengthBasis()
	{
		return strengthBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getStepKind()
	{
		return stepKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRatingBasis()
	{
		return ratingBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPathogenGroup()
	{
		return pathogenGroupEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCostCategory()
	{
		return costCategoryEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getSupplyKind()
	{
		return supplyKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getPriceBasis()
	{
		return priceBasisEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getReadingKind()
	{
		return readingKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getWaterParameter()
	{
		return waterParameterEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getIncidentKind()
	{
		return incidentKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getRemarkKind()
	{
		return remarkKindEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getValueType()
	{
		return valueTypeEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getUnitPreference()
	{
		return unitPreferenceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getTopUpSource()
	{
		return topUpSourceEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EEnum getCheckAnswer()
	{
		return checkAnswerEEnum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLength()
	{
		return lengthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getLevel()
	{
		return levelEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getBore()
	{
		return boreEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getRainDepth()
	{
		return rainDepthEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getParticleSize()
	{
		return particleSizeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getHead()
	{
		return headEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getArea()
	{
		return areaEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getOpeningArea()
	{
		return openingAreaEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getVolume()
	{
		return volumeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSmallVolume()
	{
		return smallVolumeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getFlow()
	{
		return flowEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTapFlow()
	{
		return tapFlowEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDailyVolume()
	{
		return dailyVolumeEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getVelocity()
	{
		return velocityEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPressure()
	{
		return pressureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPressureHead()
	{
		return pressureHeadEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTemperature()
	{
		return temperatureEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getPower()
	{
		return powerEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSpecificEnergy()
	{
		return specificEnergyEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getSeconds()
	{
		return secondsEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMinutes()
	{
		return minutesEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getHours()
	{
		return hoursEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDays()
	{
		return daysEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getYears()
	{
		return yearsEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getIntensity()
	{
		return intensityEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getConcentration()
	{
		return concentrationEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getUvDose()
	{
		return uvDoseEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTurbidity()
	{
		return turbidityEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDensity()
	{
		return densityEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMass()
	{
		return massEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getRotationalSpeed()
	{
		return rotationalSpeedEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getAngle()
	{
		return angleEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getRate()
	{
		return rateEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMoney()
	{
		return moneyEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getUnitCost()
	{
		return unitCostEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getEnergyCost()
	{
		return energyCostEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getCoefficient()
	{
		return coefficientEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getShare()
	{
		return shareEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getMeasurement()
	{
		return measurementEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDate()
	{
		return dateEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getDayOfYear()
	{
		return dayOfYearEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EDataType getTimeOfDay()
	{
		return timeOfDayEDataType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SiteFactory getSiteFactory()
	{
		return (SiteFactory)getEFactoryInstance();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isCreated = false;

	/**
	 * Creates the meta-model objects for the package.  This method is
	 * guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void createPackageContents()
	{
		if (isCreated) return;
		isCreated = true;

		// Create classes and their features
		rowEClass = createEClass(ROW);

		elementEClass = createEClass(ELEMENT);
		createEAttribute(elementEClass, ELEMENT__ID);
		createEAttribute(elementEClass, ELEMENT__NOTE);

		namedElementEClass = createEClass(NAMED_ELEMENT);
		createEAttribute(namedElementEClass, NAMED_ELEMENT__NAME);

		componentEClass = createEClass(COMPONENT);
		createEAttribute(componentEClass, COMPONENT__IN_USE);
		createEAttribute(componentEClass, COMPONENT__INSTALLED);
		createEAttribute(componentEClass, COMPONENT__DRAWING_PLACE);

		receiverEClass = createEClass(RECEIVER);

		conduitEClass = createEClass(CONDUIT);
		createEReference(conduitEClass, CONDUIT__DRAINS_TO);

		pipeNodeEClass = createEClass(PIPE_NODE);

		siteEClass = createEClass(SITE);
		createEAttribute(siteEClass, SITE__SCHEMA_VERSION);
		createEAttribute(siteEClass, SITE__PLACE);
		createEAttribute(siteEClass, SITE__LATITUDE);
		createEAttribute(siteEClass, SITE__ALTITUDE);
		createEAttribute(siteEClass, SITE__WATER_TEMPERATURE_MIN);
		createEAttribute(siteEClass, SITE__WATER_TEMPERATURE_USUAL);
		createEAttribute(siteEClass, SITE__WATER_TEMPERATURE_MAX);
		createEAttribute(siteEClass, SITE__CURRENCY);
		createEAttribute(siteEClass, SITE__PREFERRED_UNITS);
		createEAttribute(siteEClass, SITE__AUTHOR);
		createEAttribute(siteEClass, SITE__CLIENT);
		createEAttribute(siteEClass, SITE__CREATED);
		createEReference(siteEClass, SITE__RAIN);
		createEReference(siteEClass, SITE__TARGET);
		createEReference(siteEClass, SITE__ROOFS);
		createEReference(siteEClass, SITE__GUTTERS);
		createEReference(siteEClass, SITE__DOWNPIPES);
		createEReference(siteEClass, SITE__SCREENS);
		createEReference(siteEClass, SITE__DIVERTERS);
		createEReference(siteEClass, SITE__TANKS);
		createEReference(siteEClass, SITE__TANK_LINKS);
		createEReference(siteEClass, SITE__JUNCTIONS);
		createEReference(siteEClass, SITE__PIPE_RUNS);
		createEReference(siteEClass, SITE__PUMPS);
		createEReference(siteEClass, SITE__PRESSURE_VESSELS);
		createEReference(siteEClass, SITE__TAPS);
		createEReference(siteEClass, SITE__CALENDARS);
		createEReference(siteEClass, SITE__USES);
		createEReference(siteEClass, SITE__RATIONING);
		createEReference(siteEClass, SITE__TOP_UPS);
		createEReference(siteEClass, SITE__RAW_WATER);
		createEReference(siteEClass, SITE__TRAINS);
		createEReference(siteEClass, SITE__COSTS);
		createEReference(siteEClass, SITE__ALTERNATIVES);
		createEReference(siteEClass, SITE__ECONOMY);
		createEReference(siteEClass, SITE__STAGES);
		createEReference(siteEClass, SITE__OPTIONS);
		createEReference(siteEClass, SITE__UPKEEP);
		createEReference(siteEClass, SITE__SAFETY_PLAN);
		createEReference(siteEClass, SITE__INSPECTIONS);
		createEReference(siteEClass, SITE__READINGS);
		createEReference(siteEClass, SITE__WATER_TESTS);
		createEReference(siteEClass, SITE__INCIDENTS);
		createEReference(siteEClass, SITE__SCHEME);
		createEReference(siteEClass, SITE__REMARKS);
		createEReference(siteEClass, SITE__EXTENSIONS);

		targetEClass = createEClass(TARGET);
		createEAttribute(targetEClass, TARGET__TIME_RELIABILITY);
		createEAttribute(targetEClass, TARGET__VOLUMETRIC_RELIABILITY);
		createEAttribute(targetEClass, TARGET__LONGEST_SHORTAGE);
		createEAttribute(targetEClass, TARGET__RESERVE);
		createEAttribute(targetEClass, TARGET__PUMP_OUTAGE);
		createEAttribute(targetEClass, TARGET__CONFIDENCE);
		createEAttribute(targetEClass, TARGET__BUDGET);
		createEAttribute(targetEClass, TARGET__INFECTION_TARGET);
		createEAttribute(targetEClass, TARGET__BURDEN_TARGET);

		rainSourceEClass = createEClass(RAIN_SOURCE);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__FILE);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__FORMAT);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DATE_COLUMN);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DEPTH_COLUMN);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DATE_PATTERN);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DELIMITER);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DECIMAL_COMMA);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DEPTH_UNIT);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__GAP_METHOD);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__FIRST_DAY);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__LAST_DAY);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__STATION);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__STATION_ALTITUDE);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DISTANCE);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DONOR_FILE);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DONOR_STATION);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__SCALE_TO_NORMALS);
		createEReference(rainSourceEClass, RAIN_SOURCE__NORMALS);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__SYNTHESIZE);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__SYNTHETIC_YEARS);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__SEED);
		createEReference(rainSourceEClass, RAIN_SOURCE__STRESS);
		createEReference(rainSourceEClass, RAIN_SOURCE__INTENSITIES);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__RETURN_PERIOD);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__PEAK_DURATION);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DAY_TO_SHORT_RATIO);
		createEAttribute(rainSourceEClass, RAIN_SOURCE__DAY_FACTOR);

		monthlyNormalEClass = createEClass(MONTHLY_NORMAL);
		createEAttribute(monthlyNormalEClass, MONTHLY_NORMAL__MONTH);
		createEAttribute(monthlyNormalEClass, MONTHLY_NORMAL__DEPTH);
		createEAttribute(monthlyNormalEClass, MONTHLY_NORMAL__WET_DAYS);
		createEAttribute(monthlyNormalEClass, MONTHLY_NORMAL__EVAPORATION);

		climateStressEClass = createEClass(CLIMATE_STRESS);
		createEAttribute(climateStressEClass, CLIMATE_STRESS__DEPTH_FACTOR);
		createEAttribute(climateStressEClass, CLIMATE_STRESS__DRY_SEASON_LONGER);
		createEReference(climateStressEClass, CLIMATE_STRESS__SEASONS);

		seasonFactorEClass = createEClass(SEASON_FACTOR);
		createEAttribute(seasonFactorEClass, SEASON_FACTOR__FROM);
		createEAttribute(seasonFactorEClass, SEASON_FACTOR__TO);
		createEAttribute(seasonFactorEClass, SEASON_FACTOR__FACTOR);

		intensityPointEClass = createEClass(INTENSITY_POINT);
		createEAttribute(intensityPointEClass, INTENSITY_POINT__DURATION);
		createEAttribute(intensityPointEClass, INTENSITY_POINT__RETURN_PERIOD);
		createEAttribute(intensityPointEClass, INTENSITY_POINT__INTENSITY);

		roofEClass = createEClass(ROOF);
		createEAttribute(roofEClass, ROOF__PLAN_AREA);
		createEAttribute(roofEClass, ROOF__PITCH);
		createEAttribute(roofEClass, ROOF__EAVES_LENGTH);
		createEAttribute(roofEClass, ROOF__SLOPE_HEIGHT);
		createEAttribute(roofEClass, ROOF__EAVES_LEVEL);
		createEAttribute(roofEClass, ROOF__MATERIAL);
		createEAttribute(roofEClass, ROOF__RUNOFF_COEFFICIENT);
		createEAttribute(roofEClass, ROOF__RUNOFF_BASIS);
		createEAttribute(roofEClass, ROOF__INITIAL_LOSS);
		createEAttribute(roofEClass, ROOF__COLLECTION_EFFICIENCY);
		createEAttribute(roofEClass, ROOF__PEAK_RUNOFF);
		createEAttribute(roofEClass, ROOF__HAZARDS);
		createEAttribute(roofEClass, ROOF__AGE);
		createEReference(roofEClass, ROOF__DRAINS);

		roofDrainEClass = createEClass(ROOF_DRAIN);
		createEReference(roofDrainEClass, ROOF_DRAIN__TO);
		createEAttribute(roofDrainEClass, ROOF_DRAIN__SHARE);

		gutterEClass = createEClass(GUTTER);
		createEAttribute(gutterEClass, GUTTER__PROFILE);
		createEAttribute(gutterEClass, GUTTER__WIDTH);
		createEAttribute(gutterEClass, GUTTER__SOLE_WIDTH);
		createEAttribute(gutterEClass, GUTTER__DEPTH);
		createEAttribute(gutterEClass, GUTTER__FREEBOARD);
		createEAttribute(gutterEClass, GUTTER__LENGTH);
		createEAttribute(gutterEClass, GUTTER__SLOPE);
		createEAttribute(gutterEClass, GUTTER__ROUGHNESS);
		createEAttribute(gutterEClass, GUTTER__LEVEL);
		createEAttribute(gutterEClass, GUTTER__BENDS);
		createEAttribute(gutterEClass, GUTTER__LEAF_GUARD);
		createEAttribute(gutterEClass, GUTTER__LAST_CLEANED);
		createEReference(gutterEClass, GUTTER__OUTLETS);

		gutterOutletEClass = createEClass(GUTTER_OUTLET);
		createEAttribute(gutterOutletEClass, GUTTER_OUTLET__POSITION);
		createEAttribute(gutterOutletEClass, GUTTER_OUTLET__SHAPE);
		createEAttribute(gutterOutletEClass, GUTTER_OUTLET__DIAMETER);
		createEAttribute(gutterOutletEClass, GUTTER_OUTLET__STRAINER);
		createEReference(gutterOutletEClass, GUTTER_OUTLET__TO);

		downpipeEClass = createEClass(DOWNPIPE);
		createEAttribute(downpipeEClass, DOWNPIPE__BORE);
		createEAttribute(downpipeEClass, DOWNPIPE__LENGTH);
		createEAttribute(downpipeEClass, DOWNPIPE__FILL_SHARE);
		createEAttribute(downpipeEClass, DOWNPIPE__WET);

		screenEClass = createEClass(SCREEN);
		createEAttribute(screenEClass, SCREEN__MESH);
		createEAttribute(screenEClass, SCREEN__AREA);
		createEAttribute(screenEClass, SCREEN__OPEN_SHARE);
		createEAttribute(screenEClass, SCREEN__BLOCKED_SHARE);
		createEAttribute(screenEClass, SCREEN__LOST_SHARE);
		createEAttribute(screenEClass, SCREEN__RIM_HEIGHT);

		firstFlushDiverterEClass = createEClass(FIRST_FLUSH_DIVERTER);
		createEAttribute(firstFlushDiverterEClass, FIRST_FLUSH_DIVERTER__DEPTH);
		createEAttribute(firstFlushDiverterEClass, FIRST_FLUSH_DIVERTER__VOLUME);
		createEAttribute(firstFlushDiverterEClass, FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS);
		createEAttribute(firstFlushDiverterEClass, FIRST_FLUSH_DIVERTER__DRAIN_TIME);
		createEAttribute(firstFlushDiverterEClass, FIRST_FLUSH_DIVERTER__DRAIN_ORIFICE);
		createEAttribute(firstFlushDiverterEClass, FIRST_FLUSH_DIVERTER__HEIGHT);

		tankEClass = createEClass(TANK);
		createEAttribute(tankEClass, TANK__KIND);
		createEAttribute(tankEClass, TANK__CAPACITY);
		createEAttribute(tankEClass, TANK__DEAD_VOLUME);
		createEAttribute(tankEClass, TANK__RESERVE_VOLUME);
		createEAttribute(tankEClass, TANK__BASE_LEVEL);
		createEAttribute(tankEClass, TANK__HEIGHT);
		createEAttribute(tankEClass, TANK__OUTLET_HEIGHT);
		createEAttribute(tankEClass, TANK__RESERVE_OUTLET_HEIGHT);
		createEAttribute(tankEClass, TANK__OVERFLOW_HEIGHT);
		createEAttribute(tankEClass, TANK__INLET_HEIGHT);
		createEReference(tankEClass, TANK__LEVEL_VOLUME);
		createEAttribute(tankEClass, TANK__START_HEIGHT);
		createEAttribute(tankEClass, TANK__STOP_HEIGHT);
		createEAttribute(tankEClass, TANK__CURRENT_HEIGHT);
		createEAttribute(tankEClass, TANK__CURRENT_DATE);
		createEAttribute(tankEClass, TANK__PLACE_IN_GROUND);
		createEAttribute(tankEClass, TANK__COVER);
		createEAttribute(tankEClass, TANK__MATERIAL);
		createEAttribute(tankEClass, TANK__DIAMETER);
		createEAttribute(tankEClass, TANK__LENGTH);
		createEAttribute(tankEClass, TANK__WIDTH);
		createEAttribute(tankEClass, TANK__OPEN_AREA);
		createEAttribute(tankEClass, TANK__EVAPORATION_FACTOR);
		createEAttribute(tankEClass, TANK__LEAKAGE);
		createEAttribute(tankEClass, TANK__OVERFLOW_DIAMETER);
		createEReference(tankEClass, TANK__OVERFLOWS_TO);
		createEAttribute(tankEClass, TANK__VENT_AREA);
		createEAttribute(tankEClass, TANK__SCREEN_MESH);
		createEAttribute(tankEClass, TANK__FLOATING_INTAKE);
		createEAttribute(tankEClass, TANK__CALMED_INLET);
		createEAttribute(tankEClass, TANK__LOCKED_HATCH);
		createEAttribute(tankEClass, TANK__LAST_CLEANED);
		createEReference(tankEClass, TANK__SITING);

		levelVolumePointEClass = createEClass(LEVEL_VOLUME_POINT);
		createEAttribute(levelVolumePointEClass, LEVEL_VOLUME_POINT__HEIGHT);
		createEAttribute(levelVolumePointEClass, LEVEL_VOLUME_POINT__VOLUME);

		sitingEClass = createEClass(SITING);
		createEAttribute(sitingEClass, SITING__LATRINE_DISTANCE);
		createEAttribute(sitingEClass, SITING__LATRINE_UPHILL);
		createEAttribute(sitingEClass, SITING__REFUSE_DISTANCE);
		createEAttribute(sitingEClass, SITING__GROUNDWATER_DEPTH);
		createEAttribute(sitingEClass, SITING__BURIAL_DEPTH);
		createEAttribute(sitingEClass, SITING__BASE_AREA);
		createEAttribute(sitingEClass, SITING__EMPTY_MASS);
		createEAttribute(sitingEClass, SITING__SOIL_COVER);
		createEAttribute(sitingEClass, SITING__ALLOWED_BEARING);
		createEAttribute(sitingEClass, SITING__STAND_HEIGHT);
		createEAttribute(sitingEClass, SITING__FOUNDATION_DISTANCE);
		createEAttribute(sitingEClass, SITING__SOAKAWAY);
		createEAttribute(sitingEClass, SITING__SOAKAWAY_LENGTH);
		createEAttribute(sitingEClass, SITING__SOAKAWAY_WIDTH);
		createEAttribute(sitingEClass, SITING__SOAKAWAY_DEPTH);
		createEAttribute(sitingEClass, SITING__SOAKAWAY_VOIDS);
		createEAttribute(sitingEClass, SITING__INFILTRATION);
		createEAttribute(sitingEClass, SITING__TAP_DRAIN);

		tankLinkEClass = createEClass(TANK_LINK);
		createEAttribute(tankLinkEClass, TANK_LINK__KIND);
		createEReference(tankLinkEClass, TANK_LINK__FROM);
		createEReference(tankLinkEClass, TANK_LINK__TO);
		createEAttribute(tankLinkEClass, TANK_LINK__SILL_HEIGHT);
		createEAttribute(tankLinkEClass, TANK_LINK__MAX_FLOW);
		createEAttribute(tankLinkEClass, TANK_LINK__DAILY_VOLUME);

		junctionEClass = createEClass(JUNCTION);
		createEAttribute(junctionEClass, JUNCTION__LEVEL);

		pipeRunEClass = createEClass(PIPE_RUN);
		createEAttribute(pipeRunEClass, PIPE_RUN__USE);
		createEReference(pipeRunEClass, PIPE_RUN__FROM);
		createEReference(pipeRunEClass, PIPE_RUN__TO);
		createEAttribute(pipeRunEClass, PIPE_RUN__BORE);
		createEAttribute(pipeRunEClass, PIPE_RUN__LENGTH);
		createEAttribute(pipeRunEClass, PIPE_RUN__MATERIAL);
		createEAttribute(pipeRunEClass, PIPE_RUN__WALL_THICKNESS);
		createEAttribute(pipeRunEClass, PIPE_RUN__CLOSURE_TIME);
		createEAttribute(pipeRunEClass, PIPE_RUN__PRESSURE_CLASS);
		createEAttribute(pipeRunEClass, PIPE_RUN__ROUGHNESS);
		createEAttribute(pipeRunEClass, PIPE_RUN__AGED_ROUGHNESS);
		createEReference(pipeRunEClass, PIPE_RUN__FITTINGS);
		createEReference(pipeRunEClass, PIPE_RUN__PROFILE);

		fittingEClass = createEClass(FITTING);
		createEAttribute(fittingEClass, FITTING__KIND);
		createEAttribute(fittingEClass, FITTING__COUNT);
		createEAttribute(fittingEClass, FITTING__LOSS_COEFFICIENT);

		profilePointEClass = createEClass(PROFILE_POINT);
		createEAttribute(profilePointEClass, PROFILE_POINT__DISTANCE);
		createEAttribute(profilePointEClass, PROFILE_POINT__LEVEL);

		pumpDataEClass = createEClass(PUMP_DATA);
		createEReference(pumpDataEClass, PUMP_DATA__POINTS);
		createEAttribute(pumpDataEClass, PUMP_DATA__MOTOR_EFFICIENCY);
		createEAttribute(pumpDataEClass, PUMP_DATA__RATED_SPEED);
		createEAttribute(pumpDataEClass, PUMP_DATA__RATED_POWER);
		createEAttribute(pumpDataEClass, PUMP_DATA__DISCHARGE_BORE);
		createEAttribute(pumpDataEClass, PUMP_DATA__MIN_SUBMERGENCE);
		createEAttribute(pumpDataEClass, PUMP_DATA__MAX_STARTS);
		createEAttribute(pumpDataEClass, PUMP_DATA__PRICE);
		createEAttribute(pumpDataEClass, PUMP_DATA__DATA_SOURCE);

		pumpPointEClass = createEClass(PUMP_POINT);
		createEAttribute(pumpPointEClass, PUMP_POINT__FLOW);
		createEAttribute(pumpPointEClass, PUMP_POINT__HEAD);
		createEAttribute(pumpPointEClass, PUMP_POINT__EFFICIENCY);
		createEAttribute(pumpPointEClass, PUMP_POINT__NPSH_REQUIRED);
		createEAttribute(pumpPointEClass, PUMP_POINT__INPUT_POWER);

		pumpEClass = createEClass(PUMP);
		createEAttribute(pumpEClass, PUMP__KIND);
		createEAttribute(pumpEClass, PUMP__COUNT);
		createEAttribute(pumpEClass, PUMP__ARRANGEMENT);
		createEAttribute(pumpEClass, PUMP__LEVEL);
		createEAttribute(pumpEClass, PUMP__SPEED_RATIO);
		createEAttribute(pumpEClass, PUMP__CUT_OUT_HEIGHT);
		createEAttribute(pumpEClass, PUMP__FOOT_VALVE);
		createEAttribute(pumpEClass, PUMP__ENERGY_SOURCE);
		createEReference(pumpEClass, PUMP__SUPPLY_TIMES);
		createEAttribute(pumpEClass, PUMP__OUTAGE_SHARE);
		createEAttribute(pumpEClass, PUMP__STROKE_VOLUME);
		createEAttribute(pumpEClass, PUMP__STROKES_PER_MINUTE);
		createEReference(pumpEClass, PUMP__CANDIDATES);

		pumpCandidateEClass = createEClass(PUMP_CANDIDATE);
		createEAttribute(pumpCandidateEClass, PUMP_CANDIDATE__MODEL);
		createEAttribute(pumpCandidateEClass, PUMP_CANDIDATE__CHOSEN);

		supplyTimeEClass = createEClass(SUPPLY_TIME);
		createEAttribute(supplyTimeEClass, SUPPLY_TIME__FROM);
		createEAttribute(supplyTimeEClass, SUPPLY_TIME__TO);
		createEAttribute(supplyTimeEClass, SUPPLY_TIME__WEEKDAYS);

		pressureVesselEClass = createEClass(PRESSURE_VESSEL);
		createEAttribute(pressureVesselEClass, PRESSURE_VESSEL__VOLUME);
		createEAttribute(pressureVesselEClass, PRESSURE_VESSEL__PRECHARGE);
		createEAttribute(pressureVesselEClass, PRESSURE_VESSEL__CUT_IN);
		createEAttribute(pressureVesselEClass, PRESSURE_VESSEL__CUT_OUT);
		createEAttribute(pressureVesselEClass, PRESSURE_VESSEL__LEVEL);

		tapEClass = createEClass(TAP);
		createEAttribute(tapEClass, TAP__KIND);
		createEAttribute(tapEClass, TAP__LEVEL);
		createEAttribute(tapEClass, TAP__MINIMUM_HEAD);
		createEAttribute(tapEClass, TAP__DESIGN_FLOW);
		createEAttribute(tapEClass, TAP__ORIFICE);
		createEAttribute(tapEClass, TAP__LOSS_COEFFICIENT);
		createEAttribute(tapEClass, TAP__COUNT);
		createEAttribute(tapEClass, TAP__OPEN_TOGETHER);
		createEAttribute(tapEClass, TAP__WALKING_DISTANCE);

		useCalendarEClass = createEClass(USE_CALENDAR);
		createEReference(useCalendarEClass, USE_CALENDAR__PERIODS);
		createEAttribute(useCalendarEClass, USE_CALENDAR__WEEKDAYS);
		createEReference(useCalendarEClass, USE_CALENDAR__HOLIDAYS);

		usePeriodEClass = createEClass(USE_PERIOD);
		createEAttribute(usePeriodEClass, USE_PERIOD__NAME);
		createEAttribute(usePeriodEClass, USE_PERIOD__FROM);
		createEAttribute(usePeriodEClass, USE_PERIOD__TO);
		createEAttribute(usePeriodEClass, USE_PERIOD__FACTOR);

		holidayEClass = createEClass(HOLIDAY);
		createEAttribute(holidayEClass, HOLIDAY__NAME);
		createEAttribute(holidayEClass, HOLIDAY__FROM);
		createEAttribute(holidayEClass, HOLIDAY__TO);
		createEAttribute(holidayEClass, HOLIDAY__FACTOR);

		useEClass = createEClass(USE);
		createEAttribute(useEClass, USE__PURPOSE);
		createEAttribute(useEClass, USE__CONSUMERS);
		createEAttribute(useEClass, USE__COUNT);
		createEAttribute(useEClass, USE__AMOUNT_EACH);
		createEAttribute(useEClass, USE__PRIORITY);
		createEAttribute(useEClass, USE__VULNERABLE);
		createEReference(useEClass, USE__CALENDAR);
		createEReference(useEClass, USE__TAPS);
		createEReference(useEClass, USE__TANK);
		createEReference(useEClass, USE__TRAIN);
		createEReference(useEClass, USE__PEAKS);
		createEAttribute(useEClass, USE__CONTAINERS);

		usePeakEClass = createEClass(USE_PEAK);
		createEAttribute(usePeakEClass, USE_PEAK__FROM);
		createEAttribute(usePeakEClass, USE_PEAK__TO);
		createEAttribute(usePeakEClass, USE_PEAK__SHARE);

		rationingRuleEClass = createEClass(RATIONING_RULE);
		createEReference(rationingRuleEClass, RATIONING_RULE__TANK);
		createEAttribute(rationingRuleEClass, RATIONING_RULE__BELOW);
		createEReference(rationingRuleEClass, RATIONING_RULE__USES);
		createEAttribute(rationingRuleEClass, RATIONING_RULE__ALLOWED);
		createEAttribute(rationingRuleEClass, RATIONING_RULE__FROM);
		createEAttribute(rationingRuleEClass, RATIONING_RULE__TO);

		topUpEClass = createEClass(TOP_UP);
		createEAttribute(topUpEClass, TOP_UP__SOURCE);
		createEReference(topUpEClass, TOP_UP__TANK);
		createEAttribute(topUpEClass, TOP_UP__LOAD);
		createEAttribute(topUpEClass, TOP_UP__ORDER_BELOW);
		createEAttribute(topUpEClass, TOP_UP__DELAY);
		createEAttribute(topUpEClass, TOP_UP__PRICE);
		createEAttribute(topUpEClass, TOP_UP__MOST_PER_YEAR);

		rawWaterEClass = createEClass(RAW_WATER);
		createEAttribute(rawWaterEClass, RAW_WATER__TESTED);
		createEAttribute(rawWaterEClass, RAW_WATER__TURBIDITY);
		createEAttribute(rawWaterEClass, RAW_WATER__PH);
		createEAttribute(rawWaterEClass, RAW_WATER__ALKALINITY);
		createEAttribute(rawWaterEClass, RAW_WATER__CHLORINE_DEMAND);
		createEAttribute(rawWaterEClass, RAW_WATER__SOURCE);
		createEReference(rawWaterEClass, RAW_WATER__PATHOGENS);

		pathogenLevelEClass = createEClass(PATHOGEN_LEVEL);
		createEAttribute(pathogenLevelEClass, PATHOGEN_LEVEL__GROUP);
		createEAttribute(pathogenLevelEClass, PATHOGEN_LEVEL__PATHOGEN);
		createEAttribute(pathogenLevelEClass, PATHOGEN_LEVEL__PER_LITRE);
		createEAttribute(pathogenLevelEClass, PATHOGEN_LEVEL__LOW);
		createEAttribute(pathogenLevelEClass, PATHOGEN_LEVEL__HIGH);
		createEAttribute(pathogenLevelEClass, PATHOGEN_LEVEL__SOURCE);

		treatmentTrainEClass = createEClass(TREATMENT_TRAIN);
		createEAttribute(treatmentTrainEClass, TREATMENT_TRAIN__LEVEL);
		createEAttribute(treatmentTrainEClass, TREATMENT_TRAIN__DESIGN_FLOW);
		createEAttribute(treatmentTrainEClass, TREATMENT_TRAIN__BATCH);
		createEReference(treatmentTrainEClass, TREATMENT_TRAIN__STEPS);

		treatmentStepEClass = createEClass(TREATMENT_STEP);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__KIND);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__ACTIVE);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__RATING);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__RATING_BASIS);
		createEReference(treatmentStepEClass, TREATMENT_STEP__REDUCTIONS);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__AVAILABILITY);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__MAX_FLOW);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__HEAD_LOSS_CLEAN);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__HEAD_LOSS_FOULED);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__REFERENCE_FLOW);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__CHANGE_INTERVAL);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__CHANGE_VOLUME);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__CHANGE_COST);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__LAST_CHANGED);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__MAX_TURBIDITY);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__ENERGY_SOURCE);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__POWER);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__UV_DOSE);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__VALIDATED);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__PRODUCT);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__STRENGTH);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__STRENGTH_BASIS);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__PRODUCT_DENSITY);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__PRODUCT_AGE);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__DOSE);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__RESIDUAL);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__RESIDUAL_DATE);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__CONTACT_VOLUME);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__CONTACT_TIME);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__BAFFLING);
		createEAttribute(treatmentStepEClass, TREATMENT_STEP__BATCH_VOLUME);

		logReductionEClass = createEClass(LOG_REDUCTION);
		createEAttribute(logReductionEClass, LOG_REDUCTION__GROUP);
		createEAttribute(logReductionEClass, LOG_REDUCTION__LOW);
		createEAttribute(logReductionEClass, LOG_REDUCTION__HIGH);
		createEAttribute(logReductionEClass, LOG_REDUCTION__SOURCE);

		costItemEClass = createEClass(COST_ITEM);
		createEAttribute(costItemEClass, COST_ITEM__CATEGORY);
		createEAttribute(costItemEClass, COST_ITEM__AMOUNT);
		createEAttribute(costItemEClass, COST_ITEM__QUANTITY);
		createEAttribute(costItemEClass, COST_ITEM__UNIT);
		createEReference(costItemEClass, COST_ITEM__ELEMENT);
		createEAttribute(costItemEClass, COST_ITEM__FIRST_YEAR);
		createEAttribute(costItemEClass, COST_ITEM__INTERVAL);
		createEAttribute(costItemEClass, COST_ITEM__LIFE);
		createEAttribute(costItemEClass, COST_ITEM__YEARLY_CHANGE);
		createEAttribute(costItemEClass, COST_ITEM__PERSON);

		alternativeSupplyEClass = createEClass(ALTERNATIVE_SUPPLY);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__KIND);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__PRICE);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__CAPITAL);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__CAPITAL_LIFE);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__YEARLY_COST);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__ENERGY);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__RELIABILITY);
		createEAttribute(alternativeSupplyEClass, ALTERNATIVE_SUPPLY__SOURCE);

		economyEClass = createEClass(ECONOMY);
		createEAttribute(economyEClass, ECONOMY__BASIS);
		createEAttribute(economyEClass, ECONOMY__DISCOUNT_RATE);
		createEAttribute(economyEClass, ECONOMY__INFLATION);
		createEAttribute(economyEClass, ECONOMY__HORIZON);
		createEAttribute(economyEClass, ECONOMY__BASE_YEAR);
		createEAttribute(economyEClass, ECONOMY__ENERGY_PRICE);
		createEAttribute(economyEClass, ECONOMY__LABOUR_PRICE);
		createEAttribute(economyEClass, ECONOMY__TARIFF);
		createEAttribute(economyEClass, ECONOMY__PEOPLE);

		optionEClass = createEClass(OPTION);
		createEAttribute(optionEClass, OPTION__ACTIVE);
		createEAttribute(optionEClass, OPTION__REASON);
		createEReference(optionEClass, OPTION__CHANGES);

		stageEClass = createEClass(STAGE);
		createEAttribute(stageEClass, STAGE__DATE);
		createEAttribute(stageEClass, STAGE__BUDGET);

		changeEClass = createEClass(CHANGE);
		createEReference(changeEClass, CHANGE__ELEMENT);
		createEAttribute(changeEClass, CHANGE__FEATURE);
		createEAttribute(changeEClass, CHANGE__VALUE);

		upkeepTaskEClass = createEClass(UPKEEP_TASK);
		createEReference(upkeepTaskEClass, UPKEEP_TASK__ELEMENTS);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__INTERVAL);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__DUE_ON);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__AFTER_VOLUME);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__BEFORE_FIRST_RAIN);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__LAST_DONE);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__EFFORT);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__COST);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__WHO);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__CHECKLIST);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__SPARES);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__SOURCE);
		createEAttribute(upkeepTaskEClass, UPKEEP_TASK__HAZARD);

		safetyMeasureEClass = createEClass(SAFETY_MEASURE);
		createEReference(safetyMeasureEClass, SAFETY_MEASURE__ELEMENT);
		createEAttribute(safetyMeasureEClass, SAFETY_MEASURE__HAZARD);
		createEAttribute(safetyMeasureEClass, SAFETY_MEASURE__CONTROL);
		createEAttribute(safetyMeasureEClass, SAFETY_MEASURE__LIMIT);
		createEAttribute(safetyMeasureEClass, SAFETY_MEASURE__CHECK);
		createEAttribute(safetyMeasureEClass, SAFETY_MEASURE__ACTION);
		createEAttribute(safetyMeasureEClass, SAFETY_MEASURE__WHO);

		inspectionEClass = createEClass(INSPECTION);
		createEAttribute(inspectionEClass, INSPECTION__DATE);
		createEAttribute(inspectionEClass, INSPECTION__INSPECTOR);
		createEReference(inspectionEClass, INSPECTION__ANSWERS);

		inspectionAnswerEClass = createEClass(INSPECTION_ANSWER);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__QUESTION);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__ANSWER);
		createEAttribute(inspectionAnswerEClass, INSPECTION_ANSWER__REMARK);

		readingEClass = createEClass(READING);
		createEAttribute(readingEClass, READING__DATE);
		createEAttribute(readingEClass, READING__TIME);
		createEAttribute(readingEClass, READING__KIND);
		createEAttribute(readingEClass, READING__VALUE);
		createEReference(readingEClass, READING__ELEMENT);
		createEAttribute(readingEClass, READING__READER);

		waterTestEClass = createEClass(WATER_TEST);
		createEAttribute(waterTestEClass, WATER_TEST__DATE);
		createEAttribute(waterTestEClass, WATER_TEST__PARAMETER);
		createEAttribute(waterTestEClass, WATER_TEST__VALUE);
		createEAttribute(waterTestEClass, WATER_TEST__BELOW_DETECTION);
		createEAttribute(waterTestEClass, WATER_TEST__UNIT);
		createEAttribute(waterTestEClass, WATER_TEST__LIMIT);
		createEAttribute(waterTestEClass, WATER_TEST__LIMIT_SOURCE);
		createEAttribute(waterTestEClass, WATER_TEST__LABORATORY);
		createEReference(waterTestEClass, WATER_TEST__ELEMENT);
		createEAttribute(waterTestEClass, WATER_TEST__ACTION);

		incidentEClass = createEClass(INCIDENT);
		createEAttribute(incidentEClass, INCIDENT__KIND);
		createEAttribute(incidentEClass, INCIDENT__FROM);
		createEAttribute(incidentEClass, INCIDENT__TO);
		createEReference(incidentEClass, INCIDENT__ELEMENT);
		createEAttribute(incidentEClass, INCIDENT__VOLUME_LOST);
		createEAttribute(incidentEClass, INCIDENT__ACTION);

		sharedSchemeEClass = createEClass(SHARED_SCHEME);
		createEAttribute(sharedSchemeEClass, SHARED_SCHEME__FAMILIES);
		createEAttribute(sharedSchemeEClass, SHARED_SCHEME__PEOPLE_PER_FAMILY);
		createEAttribute(sharedSchemeEClass, SHARED_SCHEME__KEY_HOLDER);
		createEAttribute(sharedSchemeEClass, SHARED_SCHEME__RATION);
		createEAttribute(sharedSchemeEClass, SHARED_SCHEME__MONTHLY_FEE);
		createEAttribute(sharedSchemeEClass, SHARED_SCHEME__NIGHT_LOSS);
		createEReference(sharedSchemeEClass, SHARED_SCHEME__CASH_BOOK);

		cashEntryEClass = createEClass(CASH_ENTRY);
		createEAttribute(cashEntryEClass, CASH_ENTRY__DATE);
		createEAttribute(cashEntryEClass, CASH_ENTRY__AMOUNT);
		createEAttribute(cashEntryEClass, CASH_ENTRY__WHAT);
		createEAttribute(cashEntryEClass, CASH_ENTRY__WHO);

		remarkEClass = createEClass(REMARK);
		createEAttribute(remarkEClass, REMARK__KIND);
		createEReference(remarkEClass, REMARK__ELEMENT);
		createEAttribute(remarkEClass, REMARK__AUTHOR);
		createEAttribute(remarkEClass, REMARK__ROLE);
		createEAttribute(remarkEClass, REMARK__DATE);
		createEAttribute(remarkEClass, REMARK__TEXT);
		createEAttribute(remarkEClass, REMARK__FINGERPRINT);
		createEAttribute(remarkEClass, REMARK__RESTS_ON);
		createEAttribute(remarkEClass, REMARK__SETTLED);
		createEReference(remarkEClass, REMARK__REPLIES);

		extensionEntryEClass = createEClass(EXTENSION_ENTRY);
		createEAttribute(extensionEntryEClass, EXTENSION_ENTRY__PLUGIN);
		createEAttribute(extensionEntryEClass, EXTENSION_ENTRY__SCHEMA);
		createEAttribute(extensionEntryEClass, EXTENSION_ENTRY__KEY);
		createEAttribute(extensionEntryEClass, EXTENSION_ENTRY__TYPE);
		createEAttribute(extensionEntryEClass, EXTENSION_ENTRY__VALUE);
		createEReference(extensionEntryEClass, EXTENSION_ENTRY__ELEMENT);

		// Create enums
		rainFormatEEnum = createEEnum(RAIN_FORMAT);
		depthUnitEEnum = createEEnum(DEPTH_UNIT);
		gapMethodEEnum = createEEnum(GAP_METHOD);
		weekdayEEnum = createEEnum(WEEKDAY);
		roofMaterialEEnum = createEEnum(ROOF_MATERIAL);
		runoffBasisEEnum = createEEnum(RUNOFF_BASIS);
		hazardEEnum = createEEnum(HAZARD);
		gutterProfileEEnum = createEEnum(GUTTER_PROFILE);
		outletShapeEEnum = createEEnum(OUTLET_SHAPE);
		tankKindEEnum = createEEnum(TANK_KIND);
		tankMaterialEEnum = createEEnum(TANK_MATERIAL);
		tankCoverEEnum = createEEnum(TANK_COVER);
		placeInGroundEEnum = createEEnum(PLACE_IN_GROUND);
		tankLinkKindEEnum = createEEnum(TANK_LINK_KIND);
		runUseEEnum = createEEnum(RUN_USE);
		pipeMaterialEEnum = createEEnum(PIPE_MATERIAL);
		fittingKindEEnum = createEEnum(FITTING_KIND);
		pumpKindEEnum = createEEnum(PUMP_KIND);
		pumpArrangementEEnum = createEEnum(PUMP_ARRANGEMENT);
		energySourceEEnum = createEEnum(ENERGY_SOURCE);
		tapKindEEnum = createEEnum(TAP_KIND);
		purposeEEnum = createEEnum(PURPOSE);
		disinfectantProductEEnum = createEEnum(DISINFECTANT_PRODUCT);
		strengthBasisEEnum = createEEnum(STRENGTH_BASIS);
		stepKindEEnum = createEEnum(STEP_KIND);
		ratingBasisEEnum = createEEnum(RATING_BASIS);
		pathogenGroupEEnum = createEEnum(PATHOGEN_GROUP);
		costCategoryEEnum = createEEnum(COST_CATEGORY);
		supplyKindEEnum = createEEnum(SUPPLY_KIND);
		priceBasisEEnum = createEEnum(PRICE_BASIS);
		readingKindEEnum = createEEnum(READING_KIND);
		waterParameterEEnum = createEEnum(WATER_PARAMETER);
		incidentKindEEnum = createEEnum(INCIDENT_KIND);
		remarkKindEEnum = createEEnum(REMARK_KIND);
		valueTypeEEnum = createEEnum(VALUE_TYPE);
		unitPreferenceEEnum = createEEnum(UNIT_PREFERENCE);
		topUpSourceEEnum = createEEnum(TOP_UP_SOURCE);
		checkAnswerEEnum = createEEnum(CHECK_ANSWER);

		// Create data types
		lengthEDataType = createEDataType(LENGTH);
		levelEDataType = createEDataType(LEVEL);
		boreEDataType = createEDataType(BORE);
		rainDepthEDataType = createEDataType(RAIN_DEPTH);
		particleSizeEDataType = createEDataType(PARTICLE_SIZE);
		headEDataType = createEDataType(HEAD);
		areaEDataType = createEDataType(AREA);
		openingAreaEDataType = createEDataType(OPENING_AREA);
		volumeEDataType = createEDataType(VOLUME);
		smallVolumeEDataType = createEDataType(SMALL_VOLUME);
		flowEDataType = createEDataType(FLOW);
		tapFlowEDataType = createEDataType(TAP_FLOW);
		dailyVolumeEDataType = createEDataType(DAILY_VOLUME);
		velocityEDataType = createEDataType(VELOCITY);
		pressureEDataType = createEDataType(PRESSURE);
		pressureHeadEDataType = createEDataType(PRESSURE_HEAD);
		temperatureEDataType = createEDataType(TEMPERATURE);
		powerEDataType = createEDataType(POWER);
		specificEnergyEDataType = createEDataType(SPECIFIC_ENERGY);
		secondsEDataType = createEDataType(SECONDS);
		minutesEDataType = createEDataType(MINUTES);
		hoursEDataType = createEDataType(HOURS);
		daysEDataType = createEDataType(DAYS);
		yearsEDataType = createEDataType(YEARS);
		intensityEDataType = createEDataType(INTENSITY);
		concentrationEDataType = createEDataType(CONCENTRATION);
		uvDoseEDataType = createEDataType(UV_DOSE);
		turbidityEDataType = createEDataType(TURBIDITY);
		densityEDataType = createEDataType(DENSITY);
		massEDataType = createEDataType(MASS);
		rotationalSpeedEDataType = createEDataType(ROTATIONAL_SPEED);
		angleEDataType = createEDataType(ANGLE);
		rateEDataType = createEDataType(RATE);
		moneyEDataType = createEDataType(MONEY);
		unitCostEDataType = createEDataType(UNIT_COST);
		energyCostEDataType = createEDataType(ENERGY_COST);
		coefficientEDataType = createEDataType(COEFFICIENT);
		shareEDataType = createEDataType(SHARE);
		measurementEDataType = createEDataType(MEASUREMENT);
		dateEDataType = createEDataType(DATE);
		dayOfYearEDataType = createEDataType(DAY_OF_YEAR);
		timeOfDayEDataType = createEDataType(TIME_OF_DAY);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private boolean isInitialized = false;

	/**
	 * Complete the initialization of the package and its meta-model.  This
	 * method is guarded to have no affect on any invocation but its first.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public void initializePackageContents()
	{
		if (isInitialized) return;
		isInitialized = true;

		// Initialize package
		setName(eNAME);
		setNsPrefix(eNS_PREFIX);
		setNsURI(eNS_URI);

		// Create type parameters

		// Set bounds for type parameters

		// Add supertypes to classes
		namedElementEClass.getESuperTypes().add(this.getElement());
		componentEClass.getESuperTypes().add(this.getNamedElement());
		receiverEClass.getESuperTypes().add(this.getComponent());
		conduitEClass.getESuperTypes().add(this.getReceiver());
		pipeNodeEClass.getESuperTypes().add(this.getComponent());
		siteEClass.getESuperTypes().add(this.getNamedElement());
		targetEClass.getESuperTypes().add(this.getElement());
		rainSourceEClass.getESuperTypes().add(this.getNamedElement());
		monthlyNormalEClass.getESuperTypes().add(this.getRow());
		climateStressEClass.getESuperTypes().add(this.getElement());
		seasonFactorEClass.getESuperTypes().add(this.getRow());
		intensityPointEClass.getESuperTypes().add(this.getRow());
		roofEClass.getESuperTypes().add(this.getComponent());
		roofDrainEClass.getESuperTypes().add(this.getRow());
		gutterEClass.getESuperTypes().add(this.getReceiver());
		gutterOutletEClass.getESuperTypes().add(this.getNamedElement());
		downpipeEClass.getESuperTypes().add(this.getConduit());
		screenEClass.getESuperTypes().add(this.getConduit());
		firstFlushDiverterEClass.getESuperTypes().add(this.getConduit());
		tankEClass.getESuperTypes().add(this.getReceiver());
		tankEClass.getESuperTypes().add(this.getPipeNode());
		levelVolumePointEClass.getESuperTypes().add(this.getRow());
		sitingEClass.getESuperTypes().add(this.getElement());
		tankLinkEClass.getESuperTypes().add(this.getComponent());
		junctionEClass.getESuperTypes().add(this.getPipeNode());
		pipeRunEClass.getESuperTypes().add(this.getComponent());
		fittingEClass.getESuperTypes().add(this.getRow());
		profilePointEClass.getESuperTypes().add(this.getRow());
		pumpPointEClass.getESuperTypes().add(this.getRow());
		pumpEClass.getESuperTypes().add(this.getPipeNode());
		pumpEClass.getESuperTypes().add(this.getPumpData());
		pumpCandidateEClass.getESuperTypes().add(this.getNamedElement());
		pumpCandidateEClass.getESuperTypes().add(this.getPumpData());
		supplyTimeEClass.getESuperTypes().add(this.getRow());
		pressureVesselEClass.getESuperTypes().add(this.getPipeNode());
		tapEClass.getESuperTypes().add(this.getPipeNode());
		useCalendarEClass.getESuperTypes().add(this.getNamedElement());
		usePeriodEClass.getESuperTypes().add(this.getRow());
		holidayEClass.getESuperTypes().add(this.getRow());
		useEClass.getESuperTypes().add(this.getComponent());
		usePeakEClass.getESuperTypes().add(this.getRow());
		rationingRuleEClass.getESuperTypes().add(this.getComponent());
		topUpEClass.getESuperTypes().add(this.getComponent());
		rawWaterEClass.getESuperTypes().add(this.getElement());
		pathogenLevelEClass.getESuperTypes().add(this.getRow());
		treatmentTrainEClass.getESuperTypes().add(this.getPipeNode());
		treatmentStepEClass.getESuperTypes().add(this.getNamedElement());
		logReductionEClass.getESuperTypes().add(this.getRow());
		costItemEClass.getESuperTypes().add(this.getNamedElement());
		alternativeSupplyEClass.getESuperTypes().add(this.getNamedElement());
		economyEClass.getESuperTypes().add(this.getElement());
		optionEClass.getESuperTypes().add(this.getNamedElement());
		stageEClass.getESuperTypes().add(this.getOption());
		changeEClass.getESuperTypes().add(this.getElement());
		upkeepTaskEClass.getESuperTypes().add(this.getNamedElement());
		safetyMeasureEClass.getESuperTypes().add(this.getNamedElement());
		inspectionEClass.getESuperTypes().add(this.getNamedElement());
		inspectionAnswerEClass.getESuperTypes().add(this.getRow());
		readingEClass.getESuperTypes().add(this.getElement());
		waterTestEClass.getESuperTypes().add(this.getElement());
		incidentEClass.getESuperTypes().add(this.getNamedElement());
		sharedSchemeEClass.getESuperTypes().add(this.getElement());
		cashEntryEClass.getESuperTypes().add(this.getRow());
		remarkEClass.getESuperTypes().add(this.getElement());
		extensionEntryEClass.getESuperTypes().add(this.getElement());

		// Initialize classes, features, and operations; add parameters
		initEClass(rowEClass, Row.class, "Row", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(elementEClass, Element.class, "Element", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getElement_Id(), ecorePackage.getEString(), "id", null, 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getElement_Note(), ecorePackage.getEString(), "note", null, 0, 1, Element.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(namedElementEClass, NamedElement.class, "NamedElement", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getNamedElement_Name(), ecorePackage.getEString(), "name", null, 0, 1, NamedElement.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(componentEClass, Component.class, "Component", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getComponent_InUse(), ecorePackage.getEBoolean(), "inUse", "true", 0, 1, Component.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComponent_Installed(), this.getDate(), "installed", null, 0, 1, Component.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getComponent_DrawingPlace(), this.getLength(), "drawingPlace", null, 0, 1, Component.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(receiverEClass, Receiver.class, "Receiver", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(conduitEClass, Conduit.class, "Conduit", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getConduit_DrainsTo(), this.getReceiver(), null, "drainsTo", null, 0, 1, Conduit.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pipeNodeEClass, PipeNode.class, "PipeNode", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);

		initEClass(siteEClass, Site.class, "Site", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSite_SchemaVersion(), ecorePackage.getEInt(), "schemaVersion", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Place(), ecorePackage.getEString(), "place", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Latitude(), this.getAngle(), "latitude", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Altitude(), this.getLength(), "altitude", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_WaterTemperatureMin(), this.getTemperature(), "waterTemperatureMin", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_WaterTemperatureUsual(), this.getTemperature(), "waterTemperatureUsual", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_WaterTemperatureMax(), this.getTemperature(), "waterTemperatureMax", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Currency(), ecorePackage.getEString(), "currency", "cur", 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_PreferredUnits(), this.getUnitPreference(), "preferredUnits", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Author(), ecorePackage.getEString(), "author", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Client(), ecorePackage.getEString(), "client", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSite_Created(), this.getDate(), "created", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Rain(), this.getRainSource(), null, "rain", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Target(), this.getTarget(), null, "target", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Roofs(), this.getRoof(), null, "roofs", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Gutters(), this.getGutter(), null, "gutters", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Downpipes(), this.getDownpipe(), null, "downpipes", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Screens(), this.getScreen(), null, "screens", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Diverters(), this.getFirstFlushDiverter(), null, "diverters", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Tanks(), this.getTank(), null, "tanks", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_TankLinks(), this.getTankLink(), null, "tankLinks", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Junctions(), this.getJunction(), null, "junctions", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_PipeRuns(), this.getPipeRun(), null, "pipeRuns", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Pumps(), this.getPump(), null, "pumps", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_PressureVessels(), this.getPressureVessel(), null, "pressureVessels", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Taps(), this.getTap(), null, "taps", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Calendars(), this.getUseCalendar(), null, "calendars", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Uses(), this.getUse(), null, "uses", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Rationing(), this.getRationingRule(), null, "rationing", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_TopUps(), this.getTopUp(), null, "topUps", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_RawWater(), this.getRawWater(), null, "rawWater", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Trains(), this.getTreatmentTrain(), null, "trains", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Costs(), this.getCostItem(), null, "costs", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Alternatives(), this.getAlternativeSupply(), null, "alternatives", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Economy(), this.getEconomy(), null, "economy", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Stages(), this.getStage(), null, "stages", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Options(), this.getOption(), null, "options", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Upkeep(), this.getUpkeepTask(), null, "upkeep", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_SafetyPlan(), this.getSafetyMeasure(), null, "safetyPlan", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Inspections(), this.getInspection(), null, "inspections", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Readings(), this.getReading(), null, "readings", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_WaterTests(), this.getWaterTest(), null, "waterTests", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Incidents(), this.getIncident(), null, "incidents", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Scheme(), this.getSharedScheme(), null, "scheme", null, 0, 1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Remarks(), this.getRemark(), null, "remarks", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSite_Extensions(), this.getExtensionEntry(), null, "extensions", null, 0, -1, Site.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(targetEClass, Target.class, "Target", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTarget_TimeReliability(), this.getShare(), "timeReliability", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_VolumetricReliability(), this.getShare(), "volumetricReliability", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_LongestShortage(), this.getDays(), "longestShortage", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Reserve(), this.getDays(), "reserve", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_PumpOutage(), this.getDays(), "pumpOutage", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Confidence(), this.getShare(), "confidence", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_Budget(), this.getMoney(), "budget", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_InfectionTarget(), this.getCoefficient(), "infectionTarget", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTarget_BurdenTarget(), this.getCoefficient(), "burdenTarget", null, 0, 1, Target.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rainSourceEClass, RainSource.class, "RainSource", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRainSource_File(), ecorePackage.getEString(), "file", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_Format(), this.getRainFormat(), "format", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DateColumn(), ecorePackage.getEString(), "dateColumn", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DepthColumn(), ecorePackage.getEString(), "depthColumn", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DatePattern(), ecorePackage.getEString(), "datePattern", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_Delimiter(), ecorePackage.getEString(), "delimiter", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DecimalComma(), ecorePackage.getEBoolean(), "decimalComma", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DepthUnit(), this.getDepthUnit(), "depthUnit", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_GapMethod(), this.getGapMethod(), "gapMethod", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_FirstDay(), this.getDate(), "firstDay", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_LastDay(), this.getDate(), "lastDay", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_Station(), ecorePackage.getEString(), "station", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_StationAltitude(), this.getLength(), "stationAltitude", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_Distance(), this.getLength(), "distance", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DonorFile(), ecorePackage.getEString(), "donorFile", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DonorStation(), ecorePackage.getEString(), "donorStation", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_ScaleToNormals(), ecorePackage.getEBoolean(), "scaleToNormals", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRainSource_Normals(), this.getMonthlyNormal(), null, "normals", null, 0, -1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_Synthesize(), ecorePackage.getEBoolean(), "synthesize", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_SyntheticYears(), ecorePackage.getEInt(), "syntheticYears", "100", 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_Seed(), ecorePackage.getELong(), "seed", "1", 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRainSource_Stress(), this.getClimateStress(), null, "stress", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRainSource_Intensities(), this.getIntensityPoint(), null, "intensities", null, 0, -1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_ReturnPeriod(), this.getYears(), "returnPeriod", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_PeakDuration(), this.getMinutes(), "peakDuration", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DayToShortRatio(), this.getCoefficient(), "dayToShortRatio", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRainSource_DayFactor(), this.getCoefficient(), "dayFactor", null, 0, 1, RainSource.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(monthlyNormalEClass, MonthlyNormal.class, "MonthlyNormal", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getMonthlyNormal_Month(), ecorePackage.getEInt(), "month", null, 1, 1, MonthlyNormal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMonthlyNormal_Depth(), this.getRainDepth(), "depth", null, 0, 1, MonthlyNormal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMonthlyNormal_WetDays(), this.getCoefficient(), "wetDays", null, 0, 1, MonthlyNormal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getMonthlyNormal_Evaporation(), this.getRainDepth(), "evaporation", null, 0, 1, MonthlyNormal.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(climateStressEClass, ClimateStress.class, "ClimateStress", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getClimateStress_DepthFactor(), this.getCoefficient(), "depthFactor", null, 0, 1, ClimateStress.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getClimateStress_DrySeasonLonger(), this.getDays(), "drySeasonLonger", null, 0, 1, ClimateStress.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getClimateStress_Seasons(), this.getSeasonFactor(), null, "seasons", null, 0, -1, ClimateStress.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(seasonFactorEClass, SeasonFactor.class, "SeasonFactor", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSeasonFactor_From(), this.getDayOfYear(), "from", null, 1, 1, SeasonFactor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeasonFactor_To(), this.getDayOfYear(), "to", null, 1, 1, SeasonFactor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSeasonFactor_Factor(), this.getCoefficient(), "factor", null, 1, 1, SeasonFactor.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(intensityPointEClass, IntensityPoint.class, "IntensityPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIntensityPoint_Duration(), this.getMinutes(), "duration", null, 1, 1, IntensityPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIntensityPoint_ReturnPeriod(), this.getYears(), "returnPeriod", null, 1, 1, IntensityPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIntensityPoint_Intensity(), this.getIntensity(), "intensity", null, 1, 1, IntensityPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(roofEClass, Roof.class, "Roof", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRoof_PlanArea(), this.getArea(), "planArea", null, 1, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_Pitch(), this.getAngle(), "pitch", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_EavesLength(), this.getLength(), "eavesLength", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_SlopeHeight(), this.getLength(), "slopeHeight", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_EavesLevel(), this.getLevel(), "eavesLevel", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_Material(), this.getRoofMaterial(), "material", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_RunoffCoefficient(), this.getShare(), "runoffCoefficient", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_RunoffBasis(), this.getRunoffBasis(), "runoffBasis", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_InitialLoss(), this.getRainDepth(), "initialLoss", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_CollectionEfficiency(), this.getShare(), "collectionEfficiency", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_PeakRunoff(), this.getShare(), "peakRunoff", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_Hazards(), this.getHazard(), "hazards", null, 0, -1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoof_Age(), this.getYears(), "age", null, 0, 1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRoof_Drains(), this.getRoofDrain(), null, "drains", null, 0, -1, Roof.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(roofDrainEClass, RoofDrain.class, "RoofDrain", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRoofDrain_To(), this.getReceiver(), null, "to", null, 1, 1, RoofDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRoofDrain_Share(), this.getShare(), "share", null, 0, 1, RoofDrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(gutterEClass, Gutter.class, "Gutter", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGutter_Profile(), this.getGutterProfile(), "profile", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Width(), this.getBore(), "width", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_SoleWidth(), this.getBore(), "soleWidth", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Depth(), this.getBore(), "depth", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Freeboard(), this.getBore(), "freeboard", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Length(), this.getLength(), "length", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Slope(), this.getShare(), "slope", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Roughness(), this.getCoefficient(), "roughness", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Level(), this.getLevel(), "level", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_Bends(), ecorePackage.getEInt(), "bends", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_LeafGuard(), ecorePackage.getEBoolean(), "leafGuard", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutter_LastCleaned(), this.getDate(), "lastCleaned", null, 0, 1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGutter_Outlets(), this.getGutterOutlet(), null, "outlets", null, 0, -1, Gutter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(gutterOutletEClass, GutterOutlet.class, "GutterOutlet", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getGutterOutlet_Position(), this.getLength(), "position", null, 0, 1, GutterOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutterOutlet_Shape(), this.getOutletShape(), "shape", null, 0, 1, GutterOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutterOutlet_Diameter(), this.getBore(), "diameter", null, 0, 1, GutterOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getGutterOutlet_Strainer(), ecorePackage.getEBoolean(), "strainer", null, 0, 1, GutterOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getGutterOutlet_To(), this.getReceiver(), null, "to", null, 0, 1, GutterOutlet.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(downpipeEClass, Downpipe.class, "Downpipe", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getDownpipe_Bore(), this.getBore(), "bore", null, 0, 1, Downpipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDownpipe_Length(), this.getLength(), "length", null, 0, 1, Downpipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDownpipe_FillShare(), this.getShare(), "fillShare", null, 0, 1, Downpipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getDownpipe_Wet(), ecorePackage.getEBoolean(), "wet", null, 0, 1, Downpipe.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(screenEClass, Screen.class, "Screen", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getScreen_Mesh(), this.getBore(), "mesh", null, 0, 1, Screen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreen_Area(), this.getOpeningArea(), "area", null, 0, 1, Screen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreen_OpenShare(), this.getShare(), "openShare", null, 0, 1, Screen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreen_BlockedShare(), this.getShare(), "blockedShare", null, 0, 1, Screen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreen_LostShare(), this.getShare(), "lostShare", null, 0, 1, Screen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getScreen_RimHeight(), this.getBore(), "rimHeight", null, 0, 1, Screen.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(firstFlushDiverterEClass, FirstFlushDiverter.class, "FirstFlushDiverter", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFirstFlushDiverter_Depth(), this.getRainDepth(), "depth", null, 0, 1, FirstFlushDiverter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFirstFlushDiverter_Volume(), this.getSmallVolume(), "volume", null, 0, 1, FirstFlushDiverter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFirstFlushDiverter_ResetDryDays(), this.getDays(), "resetDryDays", null, 0, 1, FirstFlushDiverter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFirstFlushDiverter_DrainTime(), this.getHours(), "drainTime", null, 0, 1, FirstFlushDiverter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFirstFlushDiverter_DrainOrifice(), this.getBore(), "drainOrifice", null, 0, 1, FirstFlushDiverter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFirstFlushDiverter_Height(), this.getLength(), "height", null, 0, 1, FirstFlushDiverter.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(tankEClass, Tank.class, "Tank", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTank_Kind(), this.getTankKind(), "kind", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Capacity(), this.getVolume(), "capacity", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_DeadVolume(), this.getVolume(), "deadVolume", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_ReserveVolume(), this.getVolume(), "reserveVolume", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_BaseLevel(), this.getLevel(), "baseLevel", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Height(), this.getLength(), "height", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_OutletHeight(), this.getLength(), "outletHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_ReserveOutletHeight(), this.getLength(), "reserveOutletHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_OverflowHeight(), this.getLength(), "overflowHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_InletHeight(), this.getLength(), "inletHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTank_LevelVolume(), this.getLevelVolumePoint(), null, "levelVolume", null, 0, -1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_StartHeight(), this.getLength(), "startHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_StopHeight(), this.getLength(), "stopHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_CurrentHeight(), this.getLength(), "currentHeight", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_CurrentDate(), this.getDate(), "currentDate", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_PlaceInGround(), this.getPlaceInGround(), "placeInGround", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Cover(), this.getTankCover(), "cover", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Material(), this.getTankMaterial(), "material", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Diameter(), this.getLength(), "diameter", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Length(), this.getLength(), "length", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Width(), this.getLength(), "width", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_OpenArea(), this.getArea(), "openArea", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_EvaporationFactor(), this.getCoefficient(), "evaporationFactor", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_Leakage(), this.getDailyVolume(), "leakage", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_OverflowDiameter(), this.getBore(), "overflowDiameter", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTank_OverflowsTo(), this.getReceiver(), null, "overflowsTo", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_VentArea(), this.getOpeningArea(), "ventArea", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_ScreenMesh(), this.getBore(), "screenMesh", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_FloatingIntake(), ecorePackage.getEBoolean(), "floatingIntake", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_CalmedInlet(), ecorePackage.getEBoolean(), "calmedInlet", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_LockedHatch(), ecorePackage.getEBoolean(), "lockedHatch", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTank_LastCleaned(), this.getDate(), "lastCleaned", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTank_Siting(), this.getSiting(), null, "siting", null, 0, 1, Tank.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(levelVolumePointEClass, LevelVolumePoint.class, "LevelVolumePoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLevelVolumePoint_Height(), this.getLength(), "height", null, 1, 1, LevelVolumePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLevelVolumePoint_Volume(), this.getVolume(), "volume", null, 1, 1, LevelVolumePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sitingEClass, Siting.class, "Siting", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSiting_LatrineDistance(), this.getLength(), "latrineDistance", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_LatrineUphill(), ecorePackage.getEBoolean(), "latrineUphill", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_RefuseDistance(), this.getLength(), "refuseDistance", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_GroundwaterDepth(), this.getLength(), "groundwaterDepth", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_BurialDepth(), this.getLength(), "burialDepth", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_BaseArea(), this.getArea(), "baseArea", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_EmptyMass(), this.getMass(), "emptyMass", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_SoilCover(), this.getLength(), "soilCover", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_AllowedBearing(), this.getPressure(), "allowedBearing", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_StandHeight(), this.getLength(), "standHeight", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_FoundationDistance(), this.getLength(), "foundationDistance", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_Soakaway(), ecorePackage.getEBoolean(), "soakaway", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_SoakawayLength(), this.getLength(), "soakawayLength", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_SoakawayWidth(), this.getLength(), "soakawayWidth", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_SoakawayDepth(), this.getLength(), "soakawayDepth", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_SoakawayVoids(), this.getShare(), "soakawayVoids", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_Infiltration(), this.getIntensity(), "infiltration", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSiting_TapDrain(), this.getTapFlow(), "tapDrain", null, 0, 1, Siting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(tankLinkEClass, TankLink.class, "TankLink", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTankLink_Kind(), this.getTankLinkKind(), "kind", null, 0, 1, TankLink.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTankLink_From(), this.getTank(), null, "from", null, 1, 1, TankLink.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTankLink_To(), this.getTank(), null, "to", null, 1, 1, TankLink.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTankLink_SillHeight(), this.getLength(), "sillHeight", null, 0, 1, TankLink.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTankLink_MaxFlow(), this.getFlow(), "maxFlow", null, 0, 1, TankLink.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTankLink_DailyVolume(), this.getDailyVolume(), "dailyVolume", null, 0, 1, TankLink.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(junctionEClass, Junction.class, "Junction", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getJunction_Level(), this.getLevel(), "level", null, 0, 1, Junction.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pipeRunEClass, PipeRun.class, "PipeRun", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPipeRun_Use(), this.getRunUse(), "use", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPipeRun_From(), this.getPipeNode(), null, "from", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPipeRun_To(), this.getPipeNode(), null, "to", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_Bore(), this.getBore(), "bore", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_Length(), this.getLength(), "length", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_Material(), this.getPipeMaterial(), "material", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_WallThickness(), this.getBore(), "wallThickness", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_ClosureTime(), this.getSeconds(), "closureTime", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_PressureClass(), this.getPressure(), "pressureClass", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_Roughness(), this.getBore(), "roughness", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPipeRun_AgedRoughness(), this.getBore(), "agedRoughness", null, 0, 1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPipeRun_Fittings(), this.getFitting(), null, "fittings", null, 0, -1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPipeRun_Profile(), this.getProfilePoint(), null, "profile", null, 0, -1, PipeRun.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(fittingEClass, Fitting.class, "Fitting", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getFitting_Kind(), this.getFittingKind(), "kind", null, 0, 1, Fitting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFitting_Count(), ecorePackage.getEInt(), "count", "1", 0, 1, Fitting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getFitting_LossCoefficient(), this.getCoefficient(), "lossCoefficient", null, 0, 1, Fitting.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(profilePointEClass, ProfilePoint.class, "ProfilePoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getProfilePoint_Distance(), this.getLength(), "distance", null, 1, 1, ProfilePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getProfilePoint_Level(), this.getLevel(), "level", null, 1, 1, ProfilePoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pumpDataEClass, PumpData.class, "PumpData", IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getPumpData_Points(), this.getPumpPoint(), null, "points", null, 0, -1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_MotorEfficiency(), this.getShare(), "motorEfficiency", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_RatedSpeed(), this.getRotationalSpeed(), "ratedSpeed", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_RatedPower(), this.getPower(), "ratedPower", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_DischargeBore(), this.getBore(), "dischargeBore", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_MinSubmergence(), this.getLength(), "minSubmergence", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_MaxStarts(), this.getRate(), "maxStarts", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_Price(), this.getMoney(), "price", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpData_DataSource(), ecorePackage.getEString(), "dataSource", null, 0, 1, PumpData.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pumpPointEClass, PumpPoint.class, "PumpPoint", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPumpPoint_Flow(), this.getFlow(), "flow", null, 1, 1, PumpPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpPoint_Head(), this.getHead(), "head", null, 1, 1, PumpPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpPoint_Efficiency(), this.getShare(), "efficiency", null, 0, 1, PumpPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpPoint_NpshRequired(), this.getHead(), "npshRequired", null, 0, 1, PumpPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpPoint_InputPower(), this.getPower(), "inputPower", null, 0, 1, PumpPoint.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pumpEClass, Pump.class, "Pump", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPump_Kind(), this.getPumpKind(), "kind", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_Count(), ecorePackage.getEInt(), "count", "1", 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_Arrangement(), this.getPumpArrangement(), "arrangement", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_Level(), this.getLevel(), "level", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_SpeedRatio(), this.getCoefficient(), "speedRatio", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_CutOutHeight(), this.getLength(), "cutOutHeight", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_FootValve(), ecorePackage.getEBoolean(), "footValve", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_EnergySource(), this.getEnergySource(), "energySource", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPump_SupplyTimes(), this.getSupplyTime(), null, "supplyTimes", null, 0, -1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_OutageShare(), this.getShare(), "outageShare", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_StrokeVolume(), this.getSmallVolume(), "strokeVolume", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPump_StrokesPerMinute(), this.getCoefficient(), "strokesPerMinute", null, 0, 1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getPump_Candidates(), this.getPumpCandidate(), null, "candidates", null, 0, -1, Pump.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pumpCandidateEClass, PumpCandidate.class, "PumpCandidate", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPumpCandidate_Model(), ecorePackage.getEString(), "model", null, 0, 1, PumpCandidate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPumpCandidate_Chosen(), ecorePackage.getEBoolean(), "chosen", null, 0, 1, PumpCandidate.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(supplyTimeEClass, SupplyTime.class, "SupplyTime", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSupplyTime_From(), this.getTimeOfDay(), "from", null, 1, 1, SupplyTime.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSupplyTime_To(), this.getTimeOfDay(), "to", null, 1, 1, SupplyTime.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSupplyTime_Weekdays(), this.getWeekday(), "weekdays", null, 0, -1, SupplyTime.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pressureVesselEClass, PressureVessel.class, "PressureVessel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPressureVessel_Volume(), this.getSmallVolume(), "volume", null, 0, 1, PressureVessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressureVessel_Precharge(), this.getPressure(), "precharge", null, 0, 1, PressureVessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressureVessel_CutIn(), this.getPressure(), "cutIn", null, 0, 1, PressureVessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressureVessel_CutOut(), this.getPressure(), "cutOut", null, 0, 1, PressureVessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPressureVessel_Level(), this.getLevel(), "level", null, 0, 1, PressureVessel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(tapEClass, Tap.class, "Tap", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTap_Kind(), this.getTapKind(), "kind", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_Level(), this.getLevel(), "level", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_MinimumHead(), this.getPressureHead(), "minimumHead", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_DesignFlow(), this.getTapFlow(), "designFlow", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_Orifice(), this.getBore(), "orifice", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_LossCoefficient(), this.getCoefficient(), "lossCoefficient", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_Count(), ecorePackage.getEInt(), "count", "1", 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_OpenTogether(), ecorePackage.getEInt(), "openTogether", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTap_WalkingDistance(), this.getLength(), "walkingDistance", null, 0, 1, Tap.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(useCalendarEClass, UseCalendar.class, "UseCalendar", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getUseCalendar_Periods(), this.getUsePeriod(), null, "periods", null, 0, -1, UseCalendar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUseCalendar_Weekdays(), this.getWeekday(), "weekdays", null, 0, -1, UseCalendar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUseCalendar_Holidays(), this.getHoliday(), null, "holidays", null, 0, -1, UseCalendar.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(usePeriodEClass, UsePeriod.class, "UsePeriod", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUsePeriod_Name(), ecorePackage.getEString(), "name", null, 0, 1, UsePeriod.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsePeriod_From(), this.getDayOfYear(), "from", null, 1, 1, UsePeriod.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsePeriod_To(), this.getDayOfYear(), "to", null, 1, 1, UsePeriod.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsePeriod_Factor(), this.getCoefficient(), "factor", null, 0, 1, UsePeriod.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(holidayEClass, Holiday.class, "Holiday", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getHoliday_Name(), ecorePackage.getEString(), "name", null, 0, 1, Holiday.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHoliday_From(), this.getDayOfYear(), "from", null, 1, 1, Holiday.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHoliday_To(), this.getDayOfYear(), "to", null, 0, 1, Holiday.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getHoliday_Factor(), this.getCoefficient(), "factor", null, 0, 1, Holiday.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(useEClass, Use.class, "Use", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUse_Purpose(), this.getPurpose(), "purpose", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUse_Consumers(), ecorePackage.getEString(), "consumers", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUse_Count(), this.getCoefficient(), "count", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUse_AmountEach(), this.getDailyVolume(), "amountEach", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUse_Priority(), ecorePackage.getEInt(), "priority", "3", 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUse_Vulnerable(), ecorePackage.getEBoolean(), "vulnerable", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUse_Calendar(), this.getUseCalendar(), null, "calendar", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUse_Taps(), this.getTap(), null, "taps", null, 0, -1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUse_Tank(), this.getTank(), null, "tank", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUse_Train(), this.getTreatmentTrain(), null, "train", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getUse_Peaks(), this.getUsePeak(), null, "peaks", null, 0, -1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUse_Containers(), ecorePackage.getEBoolean(), "containers", null, 0, 1, Use.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(usePeakEClass, UsePeak.class, "UsePeak", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getUsePeak_From(), this.getTimeOfDay(), "from", null, 1, 1, UsePeak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsePeak_To(), this.getTimeOfDay(), "to", null, 1, 1, UsePeak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUsePeak_Share(), this.getShare(), "share", null, 1, 1, UsePeak.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rationingRuleEClass, RationingRule.class, "RationingRule", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getRationingRule_Tank(), this.getTank(), null, "tank", null, 0, 1, RationingRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRationingRule_Below(), this.getShare(), "below", null, 1, 1, RationingRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRationingRule_Uses(), this.getUse(), null, "uses", null, 0, -1, RationingRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRationingRule_Allowed(), this.getShare(), "allowed", null, 1, 1, RationingRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRationingRule_From(), this.getDayOfYear(), "from", null, 0, 1, RationingRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRationingRule_To(), this.getDayOfYear(), "to", null, 0, 1, RationingRule.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(topUpEClass, TopUp.class, "TopUp", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTopUp_Source(), this.getTopUpSource(), "source", null, 0, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTopUp_Tank(), this.getTank(), null, "tank", null, 0, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTopUp_Load(), this.getVolume(), "load", null, 1, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTopUp_OrderBelow(), this.getShare(), "orderBelow", null, 1, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTopUp_Delay(), this.getDays(), "delay", null, 0, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTopUp_Price(), this.getMoney(), "price", null, 0, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTopUp_MostPerYear(), ecorePackage.getEInt(), "mostPerYear", null, 0, 1, TopUp.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(rawWaterEClass, RawWater.class, "RawWater", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRawWater_Tested(), ecorePackage.getEBoolean(), "tested", null, 0, 1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWater_Turbidity(), this.getTurbidity(), "turbidity", null, 0, 1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWater_Ph(), this.getCoefficient(), "ph", null, 0, 1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWater_Alkalinity(), this.getConcentration(), "alkalinity", null, 0, 1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWater_ChlorineDemand(), this.getConcentration(), "chlorineDemand", null, 0, 1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRawWater_Source(), ecorePackage.getEString(), "source", null, 0, 1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRawWater_Pathogens(), this.getPathogenLevel(), null, "pathogens", null, 0, -1, RawWater.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(pathogenLevelEClass, PathogenLevel.class, "PathogenLevel", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getPathogenLevel_Group(), this.getPathogenGroup(), "group", null, 0, 1, PathogenLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPathogenLevel_Pathogen(), ecorePackage.getEString(), "pathogen", null, 0, 1, PathogenLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPathogenLevel_PerLitre(), this.getCoefficient(), "perLitre", null, 1, 1, PathogenLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPathogenLevel_Low(), this.getCoefficient(), "low", null, 0, 1, PathogenLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPathogenLevel_High(), this.getCoefficient(), "high", null, 0, 1, PathogenLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getPathogenLevel_Source(), ecorePackage.getEString(), "source", null, 1, 1, PathogenLevel.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(treatmentTrainEClass, TreatmentTrain.class, "TreatmentTrain", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTreatmentTrain_Level(), this.getLevel(), "level", null, 0, 1, TreatmentTrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentTrain_DesignFlow(), this.getTapFlow(), "designFlow", null, 0, 1, TreatmentTrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentTrain_Batch(), ecorePackage.getEBoolean(), "batch", null, 0, 1, TreatmentTrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTreatmentTrain_Steps(), this.getTreatmentStep(), null, "steps", null, 0, -1, TreatmentTrain.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(treatmentStepEClass, TreatmentStep.class, "TreatmentStep", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getTreatmentStep_Kind(), this.getStepKind(), "kind", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Active(), ecorePackage.getEBoolean(), "active", "true", 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Rating(), this.getParticleSize(), "rating", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_RatingBasis(), this.getRatingBasis(), "ratingBasis", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getTreatmentStep_Reductions(), this.getLogReduction(), null, "reductions", null, 0, -1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Availability(), this.getShare(), "availability", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_MaxFlow(), this.getTapFlow(), "maxFlow", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_HeadLossClean(), this.getPressureHead(), "headLossClean", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_HeadLossFouled(), this.getPressureHead(), "headLossFouled", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ReferenceFlow(), this.getTapFlow(), "referenceFlow", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ChangeInterval(), this.getDays(), "changeInterval", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ChangeVolume(), this.getVolume(), "changeVolume", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ChangeCost(), this.getMoney(), "changeCost", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_LastChanged(), this.getDate(), "lastChanged", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_MaxTurbidity(), this.getTurbidity(), "maxTurbidity", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_EnergySource(), this.getEnergySource(), "energySource", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Power(), this.getPower(), "power", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_UvDose(), this.getUvDose(), "uvDose", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Validated(), ecorePackage.getEBoolean(), "validated", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Product(), this.getDisinfectantProduct(), "product", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Strength(), this.getShare(), "strength", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_StrengthBasis(), this.getStrengthBasis(), "strengthBasis", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ProductDensity(), this.getDensity(), "productDensity", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ProductAge(), this.getDays(), "productAge", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Dose(), this.getConcentration(), "dose", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Residual(), this.getConcentration(), "residual", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ResidualDate(), this.getDate(), "residualDate", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ContactVolume(), this.getVolume(), "contactVolume", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_ContactTime(), this.getMinutes(), "contactTime", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_Baffling(), this.getCoefficient(), "baffling", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getTreatmentStep_BatchVolume(), this.getSmallVolume(), "batchVolume", null, 0, 1, TreatmentStep.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(logReductionEClass, LogReduction.class, "LogReduction", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getLogReduction_Group(), this.getPathogenGroup(), "group", null, 0, 1, LogReduction.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLogReduction_Low(), this.getCoefficient(), "low", null, 1, 1, LogReduction.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLogReduction_High(), this.getCoefficient(), "high", null, 0, 1, LogReduction.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getLogReduction_Source(), ecorePackage.getEString(), "source", null, 1, 1, LogReduction.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(costItemEClass, CostItem.class, "CostItem", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCostItem_Category(), this.getCostCategory(), "category", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_Amount(), this.getMoney(), "amount", null, 1, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_Quantity(), this.getCoefficient(), "quantity", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getCostItem_Element(), this.getNamedElement(), null, "element", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_FirstYear(), ecorePackage.getEInt(), "firstYear", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_Interval(), this.getYears(), "interval", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_Life(), this.getYears(), "life", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_YearlyChange(), this.getShare(), "yearlyChange", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCostItem_Person(), ecorePackage.getEString(), "person", null, 0, 1, CostItem.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(alternativeSupplyEClass, AlternativeSupply.class, "AlternativeSupply", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getAlternativeSupply_Kind(), this.getSupplyKind(), "kind", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_Price(), this.getUnitCost(), "price", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_Capital(), this.getMoney(), "capital", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_CapitalLife(), this.getYears(), "capitalLife", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_YearlyCost(), this.getMoney(), "yearlyCost", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_Energy(), this.getSpecificEnergy(), "energy", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_Reliability(), this.getShare(), "reliability", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getAlternativeSupply_Source(), ecorePackage.getEString(), "source", null, 0, 1, AlternativeSupply.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(economyEClass, Economy.class, "Economy", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getEconomy_Basis(), this.getPriceBasis(), "basis", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_DiscountRate(), this.getShare(), "discountRate", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_Inflation(), this.getShare(), "inflation", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_Horizon(), this.getYears(), "horizon", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_BaseYear(), ecorePackage.getEInt(), "baseYear", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_EnergyPrice(), this.getEnergyCost(), "energyPrice", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_LabourPrice(), this.getMoney(), "labourPrice", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_Tariff(), this.getUnitCost(), "tariff", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getEconomy_People(), this.getCoefficient(), "people", null, 0, 1, Economy.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(optionEClass, Option.class, "Option", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getOption_Active(), ecorePackage.getEBoolean(), "active", "true", 0, 1, Option.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getOption_Reason(), ecorePackage.getEString(), "reason", null, 0, 1, Option.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getOption_Changes(), this.getChange(), null, "changes", null, 0, -1, Option.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(stageEClass, Stage.class, "Stage", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getStage_Date(), this.getDate(), "date", null, 0, 1, Stage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getStage_Budget(), this.getMoney(), "budget", null, 0, 1, Stage.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(changeEClass, Change.class, "Change", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getChange_Element(), this.getNamedElement(), null, "element", null, 1, 1, Change.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getChange_Feature(), ecorePackage.getEString(), "feature", null, 1, 1, Change.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getChange_Value(), ecorePackage.getEString(), "value", null, 0, 1, Change.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(upkeepTaskEClass, UpkeepTask.class, "UpkeepTask", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getUpkeepTask_Elements(), this.getNamedElement(), null, "elements", null, 0, -1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Interval(), this.getDays(), "interval", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_DueOn(), this.getDayOfYear(), "dueOn", null, 0, -1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_AfterVolume(), this.getVolume(), "afterVolume", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_BeforeFirstRain(), ecorePackage.getEBoolean(), "beforeFirstRain", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_LastDone(), this.getDate(), "lastDone", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Effort(), this.getHours(), "effort", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Cost(), this.getMoney(), "cost", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Who(), ecorePackage.getEString(), "who", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Checklist(), ecorePackage.getEString(), "checklist", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Spares(), ecorePackage.getEString(), "spares", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Source(), ecorePackage.getEString(), "source", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getUpkeepTask_Hazard(), ecorePackage.getEString(), "hazard", null, 0, 1, UpkeepTask.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(safetyMeasureEClass, SafetyMeasure.class, "SafetyMeasure", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEReference(getSafetyMeasure_Element(), this.getNamedElement(), null, "element", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSafetyMeasure_Hazard(), ecorePackage.getEString(), "hazard", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSafetyMeasure_Control(), ecorePackage.getEString(), "control", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSafetyMeasure_Limit(), ecorePackage.getEString(), "limit", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSafetyMeasure_Check(), ecorePackage.getEString(), "check", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSafetyMeasure_Action(), ecorePackage.getEString(), "action", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSafetyMeasure_Who(), ecorePackage.getEString(), "who", null, 0, 1, SafetyMeasure.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(inspectionEClass, Inspection.class, "Inspection", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getInspection_Date(), this.getDate(), "date", null, 1, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspection_Inspector(), ecorePackage.getEString(), "inspector", null, 0, 1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getInspection_Answers(), this.getInspectionAnswer(), null, "answers", null, 0, -1, Inspection.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(inspectionAnswerEClass, InspectionAnswer.class, "InspectionAnswer", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getInspectionAnswer_Question(), ecorePackage.getEString(), "question", null, 1, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspectionAnswer_Answer(), this.getCheckAnswer(), "answer", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getInspectionAnswer_Remark(), ecorePackage.getEString(), "remark", null, 0, 1, InspectionAnswer.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(readingEClass, Reading.class, "Reading", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getReading_Date(), this.getDate(), "date", null, 1, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Time(), this.getTimeOfDay(), "time", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Kind(), this.getReadingKind(), "kind", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Value(), this.getMeasurement(), "value", null, 1, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getReading_Element(), this.getNamedElement(), null, "element", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getReading_Reader(), ecorePackage.getEString(), "reader", null, 0, 1, Reading.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(waterTestEClass, WaterTest.class, "WaterTest", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getWaterTest_Date(), this.getDate(), "date", null, 1, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_Parameter(), this.getWaterParameter(), "parameter", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_Value(), this.getCoefficient(), "value", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_BelowDetection(), ecorePackage.getEBoolean(), "belowDetection", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_Unit(), ecorePackage.getEString(), "unit", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_Limit(), this.getCoefficient(), "limit", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_LimitSource(), ecorePackage.getEString(), "limitSource", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_Laboratory(), ecorePackage.getEString(), "laboratory", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getWaterTest_Element(), this.getNamedElement(), null, "element", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getWaterTest_Action(), ecorePackage.getEString(), "action", null, 0, 1, WaterTest.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(incidentEClass, Incident.class, "Incident", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getIncident_Kind(), this.getIncidentKind(), "kind", null, 0, 1, Incident.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIncident_From(), this.getDate(), "from", null, 1, 1, Incident.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIncident_To(), this.getDate(), "to", null, 0, 1, Incident.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getIncident_Element(), this.getNamedElement(), null, "element", null, 0, 1, Incident.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIncident_VolumeLost(), this.getVolume(), "volumeLost", null, 0, 1, Incident.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getIncident_Action(), ecorePackage.getEString(), "action", null, 0, 1, Incident.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(sharedSchemeEClass, SharedScheme.class, "SharedScheme", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getSharedScheme_Families(), ecorePackage.getEInt(), "families", null, 0, 1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSharedScheme_PeoplePerFamily(), this.getCoefficient(), "peoplePerFamily", null, 0, 1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSharedScheme_KeyHolder(), ecorePackage.getEString(), "keyHolder", null, 0, 1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSharedScheme_Ration(), this.getDailyVolume(), "ration", null, 0, 1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSharedScheme_MonthlyFee(), this.getMoney(), "monthlyFee", null, 0, 1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getSharedScheme_NightLoss(), this.getTapFlow(), "nightLoss", null, 0, 1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getSharedScheme_CashBook(), this.getCashEntry(), null, "cashBook", null, 0, -1, SharedScheme.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(cashEntryEClass, CashEntry.class, "CashEntry", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getCashEntry_Date(), this.getDate(), "date", null, 1, 1, CashEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCashEntry_Amount(), this.getMoney(), "amount", null, 1, 1, CashEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCashEntry_What(), ecorePackage.getEString(), "what", null, 0, 1, CashEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getCashEntry_Who(), ecorePackage.getEString(), "who", null, 0, 1, CashEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(remarkEClass, Remark.class, "Remark", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getRemark_Kind(), this.getRemarkKind(), "kind", null, 0, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRemark_Element(), this.getNamedElement(), null, "element", null, 0, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_Author(), ecorePackage.getEString(), "author", null, 1, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_Role(), ecorePackage.getEString(), "role", null, 0, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_Date(), this.getDate(), "date", null, 1, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_Text(), ecorePackage.getEString(), "text", null, 1, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_Fingerprint(), ecorePackage.getEString(), "fingerprint", null, 0, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_RestsOn(), ecorePackage.getEString(), "restsOn", null, 0, -1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, !IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getRemark_Settled(), ecorePackage.getEBoolean(), "settled", null, 0, 1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getRemark_Replies(), this.getRemark(), null, "replies", null, 0, -1, Remark.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		initEClass(extensionEntryEClass, ExtensionEntry.class, "ExtensionEntry", !IS_ABSTRACT, !IS_INTERFACE, IS_GENERATED_INSTANCE_CLASS);
		initEAttribute(getExtensionEntry_Plugin(), ecorePackage.getEString(), "plugin", null, 1, 1, ExtensionEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExtensionEntry_Schema(), ecorePackage.getEInt(), "schema", "1", 0, 1, ExtensionEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExtensionEntry_Key(), ecorePackage.getEString(), "key", null, 1, 1, ExtensionEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExtensionEntry_Type(), this.getValueType(), "type", null, 0, 1, ExtensionEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEAttribute(getExtensionEntry_Value(), ecorePackage.getEString(), "value", null, 0, 1, ExtensionEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_UNSETTABLE, !IS_ID, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);
		initEReference(getExtensionEntry_Element(), this.getNamedElement(), null, "element", null, 0, 1, ExtensionEntry.class, !IS_TRANSIENT, !IS_VOLATILE, IS_CHANGEABLE, !IS_COMPOSITE, !IS_RESOLVE_PROXIES, !IS_UNSETTABLE, IS_UNIQUE, !IS_DERIVED, IS_ORDERED);

		// Initialize enums and add enum literals
		initEEnum(rainFormatEEnum, RainFormat.class, "RainFormat");
		addEEnumLiteral(rainFormatEEnum, RainFormat.AUTO);
		addEEnumLiteral(rainFormatEEnum, RainFormat.GHCN_DAILY);
		addEEnumLiteral(rainFormatEEnum, RainFormat.GHCN_STATION_CSV);
		addEEnumLiteral(rainFormatEEnum, RainFormat.CSV);

		initEEnum(depthUnitEEnum, DepthUnit.class, "DepthUnit");
		addEEnumLiteral(depthUnitEEnum, DepthUnit.AUTO);
		addEEnumLiteral(depthUnitEEnum, DepthUnit.MILLIMETRE);
		addEEnumLiteral(depthUnitEEnum, DepthUnit.TENTH_MILLIMETRE);
		addEEnumLiteral(depthUnitEEnum, DepthUnit.INCH);
		addEEnumLiteral(depthUnitEEnum, DepthUnit.HUNDREDTH_INCH);

		initEEnum(gapMethodEEnum, GapMethod.class, "GapMethod");
		addEEnumLiteral(gapMethodEEnum, GapMethod.REFUSE);
		addEEnumLiteral(gapMethodEEnum, GapMethod.ZERO);
		addEEnumLiteral(gapMethodEEnum, GapMethod.MEAN);
		addEEnumLiteral(gapMethodEEnum, GapMethod.DONOR);

		initEEnum(weekdayEEnum, Weekday.class, "Weekday");
		addEEnumLiteral(weekdayEEnum, Weekday.MONDAY);
		addEEnumLiteral(weekdayEEnum, Weekday.TUESDAY);
		addEEnumLiteral(weekdayEEnum, Weekday.WEDNESDAY);
		addEEnumLiteral(weekdayEEnum, Weekday.THURSDAY);
		addEEnumLiteral(weekdayEEnum, Weekday.FRIDAY);
		addEEnumLiteral(weekdayEEnum, Weekday.SATURDAY);
		addEEnumLiteral(weekdayEEnum, Weekday.SUNDAY);

		initEEnum(roofMaterialEEnum, RoofMaterial.class, "RoofMaterial");
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.UNSTATED);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.GALVANISED_STEEL);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.COATED_STEEL);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.ALUMINIUM);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.CLAY_TILE);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.CONCRETE_TILE);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.SLATE);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.CONCRETE_SLAB);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.BITUMEN);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.ASBESTOS_CEMENT);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.FIBRE_CEMENT);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.PLASTIC_SHEET);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.THATCH);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.TIMBER);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.COPPER);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.ZINC);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.LEAD_SHEET);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.GREEN_ROOF);
		addEEnumLiteral(roofMaterialEEnum, RoofMaterial.OTHER);

		initEEnum(runoffBasisEEnum, RunoffBasis.class, "RunoffBasis");
		addEEnumLiteral(runoffBasisEEnum, RunoffBasis.UNSTATED);
		addEEnumLiteral(runoffBasisEEnum, RunoffBasis.EVENT);
		addEEnumLiteral(runoffBasisEEnum, RunoffBasis.LONG_TERM);

		initEEnum(hazardEEnum, Hazard.class, "Hazard");
		addEEnumLiteral(hazardEEnum, Hazard.OVERHANGING_TREES);
		addEEnumLiteral(hazardEEnum, Hazard.BIRDS);
		addEEnumLiteral(hazardEEnum, Hazard.ANIMALS);
		addEEnumLiteral(hazardEEnum, Hazard.SPRAY_DRIFT);
		addEEnumLiteral(hazardEEnum, Hazard.WOOD_SMOKE);
		addEEnumLiteral(hazardEEnum, Hazard.TRAFFIC);
		addEEnumLiteral(hazardEEnum, Hazard.INDUSTRY);
		addEEnumLiteral(hazardEEnum, Hazard.DUST);
		addEEnumLiteral(hazardEEnum, Hazard.SEA);
		addEEnumLiteral(hazardEEnum, Hazard.LEAD_FLASHING);
		addEEnumLiteral(hazardEEnum, Hazard.LEAD_PAINT);
		addEEnumLiteral(hazardEEnum, Hazard.TREATED_TIMBER);
		addEEnumLiteral(hazardEEnum, Hazard.BITUMEN_COATING);
		addEEnumLiteral(hazardEEnum, Hazard.FLUE_OUTLET);
		addEEnumLiteral(hazardEEnum, Hazard.PUBLIC_ACCESS);

		initEEnum(gutterProfileEEnum, GutterProfile.class, "GutterProfile");
		addEEnumLiteral(gutterProfileEEnum, GutterProfile.UNSTATED);
		addEEnumLiteral(gutterProfileEEnum, GutterProfile.HALF_ROUND);
		addEEnumLiteral(gutterProfileEEnum, GutterProfile.RECTANGULAR);
		addEEnumLiteral(gutterProfileEEnum, GutterProfile.TRAPEZOIDAL);
		addEEnumLiteral(gutterProfileEEnum, GutterProfile.TRIANGULAR);

		initEEnum(outletShapeEEnum, OutletShape.class, "OutletShape");
		addEEnumLiteral(outletShapeEEnum, OutletShape.UNSTATED);
		addEEnumLiteral(outletShapeEEnum, OutletShape.SHARP);
		addEEnumLiteral(outletShapeEEnum, OutletShape.ROUNDED);
		addEEnumLiteral(outletShapeEEnum, OutletShape.HOPPER);
		addEEnumLiteral(outletShapeEEnum, OutletShape.FREE_END);

		initEEnum(tankKindEEnum, TankKind.class, "TankKind");
		addEEnumLiteral(tankKindEEnum, TankKind.UNSTATED);
		addEEnumLiteral(tankKindEEnum, TankKind.CISTERN);
		addEEnumLiteral(tankKindEEnum, TankKind.OVERHEAD);
		addEEnumLiteral(tankKindEEnum, TankKind.BARREL);
		addEEnumLiteral(tankKindEEnum, TankKind.TOTE);
		addEEnumLiteral(tankKindEEnum, TankKind.POLY);
		addEEnumLiteral(tankKindEEnum, TankKind.BLADDER);
		addEEnumLiteral(tankKindEEnum, TankKind.OTHER);

		initEEnum(tankMaterialEEnum, TankMaterial.class, "TankMaterial");
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.UNSTATED);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.CONCRETE);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.FERROCEMENT);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.MASONRY);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.POLYETHYLENE);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.GALVANISED_STEEL);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.LINED_STEEL);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.STAINLESS_STEEL);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.GLASS_REINFORCED_PLASTIC);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.TIMBER);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.PLASTIC_SHEET);
		addEEnumLiteral(tankMaterialEEnum, TankMaterial.OTHER);

		initEEnum(tankCoverEEnum, TankCover.class, "TankCover");
		addEEnumLiteral(tankCoverEEnum, TankCover.UNSTATED);
		addEEnumLiteral(tankCoverEEnum, TankCover.SEALED);
		addEEnumLiteral(tankCoverEEnum, TankCover.SCREENED);
		addEEnumLiteral(tankCoverEEnum, TankCover.LOOSE);
		addEEnumLiteral(tankCoverEEnum, TankCover.OPEN);

		initEEnum(placeInGroundEEnum, PlaceInGround.class, "PlaceInGround");
		addEEnumLiteral(placeInGroundEEnum, PlaceInGround.UNSTATED);
		addEEnumLiteral(placeInGroundEEnum, PlaceInGround.ON_GROUND);
		addEEnumLiteral(placeInGroundEEnum, PlaceInGround.BURIED);
		addEEnumLiteral(placeInGroundEEnum, PlaceInGround.PARTLY_BURIED);
		addEEnumLiteral(placeInGroundEEnum, PlaceInGround.ON_STAND);

		initEEnum(tankLinkKindEEnum, TankLinkKind.class, "TankLinkKind");
		addEEnumLiteral(tankLinkKindEEnum, TankLinkKind.UNSTATED);
		addEEnumLiteral(tankLinkKindEEnum, TankLinkKind.JOINED);
		addEEnumLiteral(tankLinkKindEEnum, TankLinkKind.SERIES);
		addEEnumLiteral(tankLinkKindEEnum, TankLinkKind.TRANSFER);

		initEEnum(runUseEEnum, RunUse.class, "RunUse");
		addEEnumLiteral(runUseEEnum, RunUse.UNSTATED);
		addEEnumLiteral(runUseEEnum, RunUse.RISING_MAIN);
		addEEnumLiteral(runUseEEnum, RunUse.SUCTION);
		addEEnumLiteral(runUseEEnum, RunUse.GRAVITY_BRANCH);
		addEEnumLiteral(runUseEEnum, RunUse.PRESSURE_BRANCH);
		addEEnumLiteral(runUseEEnum, RunUse.DRAIN);

		initEEnum(pipeMaterialEEnum, PipeMaterial.class, "PipeMaterial");
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.UNSTATED);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.PVC);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.POLYETHYLENE);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.POLYPROPYLENE);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.GALVANISED_STEEL);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.STEEL);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.STAINLESS_STEEL);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.COPPER);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.CAST_IRON);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.HOSE);
		addEEnumLiteral(pipeMaterialEEnum, PipeMaterial.OTHER);

		initEEnum(fittingKindEEnum, FittingKind.class, "FittingKind");
		addEEnumLiteral(fittingKindEEnum, FittingKind.UNSTATED);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ENTRANCE_SHARP);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ENTRANCE_PROJECTING);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ENTRANCE_ROUNDED);
		addEEnumLiteral(fittingKindEEnum, FittingKind.EXIT);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ELBOW90);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ELBOW45);
		addEEnumLiteral(fittingKindEEnum, FittingKind.BEND_LONG);
		addEEnumLiteral(fittingKindEEnum, FittingKind.RETURN_BEND);
		addEEnumLiteral(fittingKindEEnum, FittingKind.TEE_THROUGH);
		addEEnumLiteral(fittingKindEEnum, FittingKind.TEE_BRANCH);
		addEEnumLiteral(fittingKindEEnum, FittingKind.GATE_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.BALL_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.GLOBE_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ANGLE_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.BUTTERFLY_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.CHECK_SWING);
		addEEnumLiteral(fittingKindEEnum, FittingKind.CHECK_LIFT);
		addEEnumLiteral(fittingKindEEnum, FittingKind.FOOT_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.STRAINER);
		addEEnumLiteral(fittingKindEEnum, FittingKind.WATER_METER);
		addEEnumLiteral(fittingKindEEnum, FittingKind.FLOAT_VALVE);
		addEEnumLiteral(fittingKindEEnum, FittingKind.REDUCER);
		addEEnumLiteral(fittingKindEEnum, FittingKind.ENLARGEMENT);
		addEEnumLiteral(fittingKindEEnum, FittingKind.COUPLING);
		addEEnumLiteral(fittingKindEEnum, FittingKind.OTHER);

		initEEnum(pumpKindEEnum, PumpKind.class, "PumpKind");
		addEEnumLiteral(pumpKindEEnum, PumpKind.UNSTATED);
		addEEnumLiteral(pumpKindEEnum, PumpKind.SURFACE);
		addEEnumLiteral(pumpKindEEnum, PumpKind.SUBMERSIBLE);
		addEEnumLiteral(pumpKindEEnum, PumpKind.HAND_PUMP);

		initEEnum(pumpArrangementEEnum, PumpArrangement.class, "PumpArrangement");
		addEEnumLiteral(pumpArrangementEEnum, PumpArrangement.SINGLE);
		addEEnumLiteral(pumpArrangementEEnum, PumpArrangement.SERIES);
		addEEnumLiteral(pumpArrangementEEnum, PumpArrangement.PARALLEL);

		initEEnum(energySourceEEnum, EnergySource.class, "EnergySource");
		addEEnumLiteral(energySourceEEnum, EnergySource.UNSTATED);
		addEEnumLiteral(energySourceEEnum, EnergySource.GRID);
		addEEnumLiteral(energySourceEEnum, EnergySource.SOLAR);
		addEEnumLiteral(energySourceEEnum, EnergySource.SOLAR_BATTERY);
		addEEnumLiteral(energySourceEEnum, EnergySource.GENERATOR);
		addEEnumLiteral(energySourceEEnum, EnergySource.ENGINE);
		addEEnumLiteral(energySourceEEnum, EnergySource.HAND);

		initEEnum(tapKindEEnum, TapKind.class, "TapKind");
		addEEnumLiteral(tapKindEEnum, TapKind.UNSTATED);
		addEEnumLiteral(tapKindEEnum, TapKind.TAP);
		addEEnumLiteral(tapKindEEnum, TapKind.STANDPOST);
		addEEnumLiteral(tapKindEEnum, TapKind.SELF_CLOSING);
		addEEnumLiteral(tapKindEEnum, TapKind.SHOWER);
		addEEnumLiteral(tapKindEEnum, TapKind.FLUSH);
		addEEnumLiteral(tapKindEEnum, TapKind.HOSE);
		addEEnumLiteral(tapKindEEnum, TapKind.DRINKING_FOUNTAIN);
		addEEnumLiteral(tapKindEEnum, TapKind.BARREL_TAP);
		addEEnumLiteral(tapKindEEnum, TapKind.STORAGE_INLET);

		initEEnum(purposeEEnum, Purpose.class, "Purpose");
		addEEnumLiteral(purposeEEnum, Purpose.UNSTATED);
		addEEnumLiteral(purposeEEnum, Purpose.GARDEN);
		addEEnumLiteral(purposeEEnum, Purpose.LIVESTOCK);
		addEEnumLiteral(purposeEEnum, Purpose.FLUSHING);
		addEEnumLiteral(purposeEEnum, Purpose.LAUNDRY);
		addEEnumLiteral(purposeEEnum, Purpose.WASHING);
		addEEnumLiteral(purposeEEnum, Purpose.COOKING);
		addEEnumLiteral(purposeEEnum, Purpose.DRINKING);
		addEEnumLiteral(purposeEEnum, Purpose.CLEANING);
		addEEnumLiteral(purposeEEnum, Purpose.CONSTRUCTION);
		addEEnumLiteral(purposeEEnum, Purpose.OTHER);

		initEEnum(disinfectantProductEEnum, DisinfectantProduct.class, "DisinfectantProduct");
		addEEnumLiteral(disinfectantProductEEnum, DisinfectantProduct.UNSTATED);
		addEEnumLiteral(disinfectantProductEEnum, DisinfectantProduct.LIQUID);
		addEEnumLiteral(disinfectantProductEEnum, DisinfectantProduct.GRANULES);
		addEEnumLiteral(disinfectantProductEEnum, DisinfectantProduct.TABLETS);

		initEEnum(strengthBasisEEnum, StrengthBasis.class, "StrengthBasis");
		addEEnumLiteral(strengthBasisEEnum, StrengthBasis.AUTO);
		addEEnumLiteral(strengthBasisEEnum, StrengthBasis.WEIGHT_PER_VOLUME);
		addEEnumLiteral(strengthBasisEEnum, StrengthBasis.WEIGHT_PER_WEIGHT);

		initEEnum(stepKindEEnum, StepKind.class, "StepKind");
		addEEnumLiteral(stepKindEEnum, StepKind.UNSTATED);
		addEEnumLiteral(stepKindEEnum, StepKind.MESH_SCREEN);
		addEEnumLiteral(stepKindEEnum, StepKind.SETTLING);
		addEEnumLiteral(stepKindEEnum, StepKind.SEDIMENT_CARTRIDGE);
		addEEnumLiteral(stepKindEEnum, StepKind.CERAMIC);
		addEEnumLiteral(stepKindEEnum, StepKind.CERAMIC_SILVER);
		addEEnumLiteral(stepKindEEnum, StepKind.GRANULAR_CARBON);
		addEEnumLiteral(stepKindEEnum, StepKind.CARBON_BLOCK);
		addEEnumLiteral(stepKindEEnum, StepKind.SLOW_SAND);
		addEEnumLiteral(stepKindEEnum, StepKind.RAPID_SAND);
		addEEnumLiteral(stepKindEEnum, StepKind.MICROFILTRATION);
		addEEnumLiteral(stepKindEEnum, StepKind.ULTRAFILTRATION);
		addEEnumLiteral(stepKindEEnum, StepKind.REVERSE_OSMOSIS);
		addEEnumLiteral(stepKindEEnum, StepKind.UV_LAMP);
		addEEnumLiteral(stepKindEEnum, StepKind.BOILING);
		addEEnumLiteral(stepKindEEnum, StepKind.SOLAR);
		addEEnumLiteral(stepKindEEnum, StepKind.CHLORINATION);
		addEEnumLiteral(stepKindEEnum, StepKind.CALCITE_CONTACT);
		addEEnumLiteral(stepKindEEnum, StepKind.SAFE_STORAGE);
		addEEnumLiteral(stepKindEEnum, StepKind.OTHER);

		initEEnum(ratingBasisEEnum, RatingBasis.class, "RatingBasis");
		addEEnumLiteral(ratingBasisEEnum, RatingBasis.UNSTATED);
		addEEnumLiteral(ratingBasisEEnum, RatingBasis.NOMINAL);
		addEEnumLiteral(ratingBasisEEnum, RatingBasis.ABSOLUTE);

		initEEnum(pathogenGroupEEnum, PathogenGroup.class, "PathogenGroup");
		addEEnumLiteral(pathogenGroupEEnum, PathogenGroup.UNSTATED);
		addEEnumLiteral(pathogenGroupEEnum, PathogenGroup.BACTERIA);
		addEEnumLiteral(pathogenGroupEEnum, PathogenGroup.VIRUSES);
		addEEnumLiteral(pathogenGroupEEnum, PathogenGroup.GIARDIA);
		addEEnumLiteral(pathogenGroupEEnum, PathogenGroup.CRYPTOSPORIDIUM);
		addEEnumLiteral(pathogenGroupEEnum, PathogenGroup.HELMINTHS);

		initEEnum(costCategoryEEnum, CostCategory.class, "CostCategory");
		addEEnumLiteral(costCategoryEEnum, CostCategory.UNSTATED);
		addEEnumLiteral(costCategoryEEnum, CostCategory.CAPITAL);
		addEEnumLiteral(costCategoryEEnum, CostCategory.OPERATION);
		addEEnumLiteral(costCategoryEEnum, CostCategory.ENERGY);
		addEEnumLiteral(costCategoryEEnum, CostCategory.CONSUMABLES);
		addEEnumLiteral(costCategoryEEnum, CostCategory.CAPITAL_MAINTENANCE);
		addEEnumLiteral(costCategoryEEnum, CostCategory.COST_OF_CAPITAL);
		addEEnumLiteral(costCategoryEEnum, CostCategory.DIRECT_SUPPORT);
		addEEnumLiteral(costCategoryEEnum, CostCategory.INDIRECT_SUPPORT);

		initEEnum(supplyKindEEnum, SupplyKind.class, "SupplyKind");
		addEEnumLiteral(supplyKindEEnum, SupplyKind.UNSTATED);
		addEEnumLiteral(supplyKindEEnum, SupplyKind.MAINS);
		addEEnumLiteral(supplyKindEEnum, SupplyKind.TANKER);
		addEEnumLiteral(supplyKindEEnum, SupplyKind.BOREHOLE);
		addEEnumLiteral(supplyKindEEnum, SupplyKind.BOTTLED);
		addEEnumLiteral(supplyKindEEnum, SupplyKind.CARRYING);
		addEEnumLiteral(supplyKindEEnum, SupplyKind.OTHER);

		initEEnum(priceBasisEEnum, PriceBasis.class, "PriceBasis");
		addEEnumLiteral(priceBasisEEnum, PriceBasis.REAL);
		addEEnumLiteral(priceBasisEEnum, PriceBasis.NOMINAL);

		initEEnum(readingKindEEnum, ReadingKind.class, "ReadingKind");
		addEEnumLiteral(readingKindEEnum, ReadingKind.UNSTATED);
		addEEnumLiteral(readingKindEEnum, ReadingKind.TANK_LEVEL);
		addEEnumLiteral(readingKindEEnum, ReadingKind.TANK_VOLUME);
		addEEnumLiteral(readingKindEEnum, ReadingKind.WATER_METER);
		addEEnumLiteral(readingKindEEnum, ReadingKind.RAIN);
		addEEnumLiteral(readingKindEEnum, ReadingKind.FREE_CHLORINE);
		addEEnumLiteral(readingKindEEnum, ReadingKind.TURBIDITY);
		addEEnumLiteral(readingKindEEnum, ReadingKind.PH);
		addEEnumLiteral(readingKindEEnum, ReadingKind.WATER_TEMPERATURE);
		addEEnumLiteral(readingKindEEnum, ReadingKind.FLOW);
		addEEnumLiteral(readingKindEEnum, ReadingKind.PRESSURE);
		addEEnumLiteral(readingKindEEnum, ReadingKind.PUMP_HOURS);
		addEEnumLiteral(readingKindEEnum, ReadingKind.ENERGY_METER);
		addEEnumLiteral(readingKindEEnum, ReadingKind.LEAK_TEST_LEVEL);
		addEEnumLiteral(readingKindEEnum, ReadingKind.PRESSURE_TEST);

		initEEnum(waterParameterEEnum, WaterParameter.class, "WaterParameter");
		addEEnumLiteral(waterParameterEEnum, WaterParameter.UNSTATED);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.ECOLI);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.TOTAL_COLIFORMS);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.HYDROGEN_SULPHIDE_STRIP);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.TURBIDITY);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.PH);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.FREE_CHLORINE);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.CONDUCTIVITY);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.HARDNESS);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.ALKALINITY);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.LEAD);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.COPPER);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.ZINC);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.IRON);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.ALUMINIUM);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.ARSENIC);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.NITRATE);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.PESTICIDES);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.HYDROCARBONS);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.ASBESTOS_FIBRES);
		addEEnumLiteral(waterParameterEEnum, WaterParameter.OTHER);

		initEEnum(incidentKindEEnum, IncidentKind.class, "IncidentKind");
		addEEnumLiteral(incidentKindEEnum, IncidentKind.UNSTATED);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.CONTAMINATION);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.ILLNESS);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.BURST);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.LEAK);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.TAP_LEFT_OPEN);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.PUMP_FAILURE);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.POWER_FAILURE);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.RAN_DRY);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.OVERFLOW_DAMAGE);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.BLOCKAGE);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.THEFT);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.INJURY);
		addEEnumLiteral(incidentKindEEnum, IncidentKind.OTHER);

		initEEnum(remarkKindEEnum, RemarkKind.class, "RemarkKind");
		addEEnumLiteral(remarkKindEEnum, RemarkKind.UNSTATED);
		addEEnumLiteral(remarkKindEEnum, RemarkKind.QUESTION);
		addEEnumLiteral(remarkKindEEnum, RemarkKind.OBJECTION);
		addEEnumLiteral(remarkKindEEnum, RemarkKind.ANSWER);
		addEEnumLiteral(remarkKindEEnum, RemarkKind.ACCEPTED);

		initEEnum(valueTypeEEnum, ValueType.class, "ValueType");
		addEEnumLiteral(valueTypeEEnum, ValueType.TEXT);
		addEEnumLiteral(valueTypeEEnum, ValueType.NUMBER);
		addEEnumLiteral(valueTypeEEnum, ValueType.QUANTITY);
		addEEnumLiteral(valueTypeEEnum, ValueType.FLAG);
		addEEnumLiteral(valueTypeEEnum, ValueType.DATE);
		addEEnumLiteral(valueTypeEEnum, ValueType.JSON);

		initEEnum(unitPreferenceEEnum, UnitPreference.class, "UnitPreference");
		addEEnumLiteral(unitPreferenceEEnum, UnitPreference.METRIC);
		addEEnumLiteral(unitPreferenceEEnum, UnitPreference.US_CUSTOMARY);
		addEEnumLiteral(unitPreferenceEEnum, UnitPreference.IMPERIAL);

		initEEnum(topUpSourceEEnum, TopUpSource.class, "TopUpSource");
		addEEnumLiteral(topUpSourceEEnum, TopUpSource.UNSTATED);
		addEEnumLiteral(topUpSourceEEnum, TopUpSource.TANKER);
		addEEnumLiteral(topUpSourceEEnum, TopUpSource.MAINS);
		addEEnumLiteral(topUpSourceEEnum, TopUpSource.BOREHOLE);
		addEEnumLiteral(topUpSourceEEnum, TopUpSource.CARRIED);

		initEEnum(checkAnswerEEnum, CheckAnswer.class, "CheckAnswer");
		addEEnumLiteral(checkAnswerEEnum, CheckAnswer.UNKNOWN);
		addEEnumLiteral(checkAnswerEEnum, CheckAnswer.YES);
		addEEnumLiteral(checkAnswerEEnum, CheckAnswer.NO);
		addEEnumLiteral(checkAnswerEEnum, CheckAnswer.NOT_APPLICABLE);

		// Initialize data types
		initEDataType(lengthEDataType, Quantity.class, "Length", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(levelEDataType, Quantity.class, "Level", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(boreEDataType, Quantity.class, "Bore", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(rainDepthEDataType, Quantity.class, "RainDepth", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(particleSizeEDataType, Quantity.class, "ParticleSize", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(headEDataType, Quantity.class, "Head", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(areaEDataType, Quantity.class, "Area", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(openingAreaEDataType, Quantity.class, "OpeningArea", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(volumeEDataType, Quantity.class, "Volume", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(smallVolumeEDataType, Quantity.class, "SmallVolume", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(flowEDataType, Quantity.class, "Flow", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(tapFlowEDataType, Quantity.class, "TapFlow", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dailyVolumeEDataType, Quantity.class, "DailyVolume", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(velocityEDataType, Quantity.class, "Velocity", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(pressureEDataType, Quantity.class, "Pressure", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(pressureHeadEDataType, Quantity.class, "PressureHead", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(temperatureEDataType, Quantity.class, "Temperature", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(powerEDataType, Quantity.class, "Power", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(specificEnergyEDataType, Quantity.class, "SpecificEnergy", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(secondsEDataType, Quantity.class, "Seconds", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(minutesEDataType, Quantity.class, "Minutes", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(hoursEDataType, Quantity.class, "Hours", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(daysEDataType, Quantity.class, "Days", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(yearsEDataType, Quantity.class, "Years", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(intensityEDataType, Quantity.class, "Intensity", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(concentrationEDataType, Quantity.class, "Concentration", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(uvDoseEDataType, Quantity.class, "UvDose", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(turbidityEDataType, Quantity.class, "Turbidity", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(densityEDataType, Quantity.class, "Density", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(massEDataType, Quantity.class, "Mass", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(rotationalSpeedEDataType, Quantity.class, "RotationalSpeed", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(angleEDataType, Quantity.class, "Angle", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(rateEDataType, Quantity.class, "Rate", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(moneyEDataType, Quantity.class, "Money", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(unitCostEDataType, Quantity.class, "UnitCost", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(energyCostEDataType, Quantity.class, "EnergyCost", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(coefficientEDataType, Quantity.class, "Coefficient", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(shareEDataType, Quantity.class, "Share", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(measurementEDataType, Quantity.class, "Measurement", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dateEDataType, LocalDate.class, "Date", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(dayOfYearEDataType, MonthDay.class, "DayOfYear", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);
		initEDataType(timeOfDayEDataType, LocalTime.class, "TimeOfDay", IS_SERIALIZABLE, !IS_GENERATED_INSTANCE_CLASS);

		// Create resource
		createResource(eNS_URI);

		// Create annotations
		// http://www.eclipse.org/emf/2002/Ecore
		createEcoreAnnotations();
		// http://www.eclipse.org/emf/2002/GenModel
		createGenModelAnnotations();
		// http://www.roofspring.org/value
		createValueAnnotations();
		// http://www.roofspring.org/quantity
		createQuantityAnnotations();
		// http://www.roofspring.org/time
		createTimeAnnotations();
	}

	/**
	 * Initializes the annotations for <b>http://www.eclipse.org/emf/2002/Ecore</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createEcoreAnnotations()
	{
		String source = "http://www.eclipse.org/emf/2002/Ecore";
		addAnnotation
		  (this,
		   source,
		   new String[]
		   {
			   "conversionDelegates", "http://www.roofspring.org/quantity http://www.roofspring.org/time"
		   });
	}

	/**
	 * Initializes the annotations for <b>http://www.eclipse.org/emf/2002/GenModel</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createGenModelAnnotations()
	{
		String source = "http://www.eclipse.org/emf/2002/GenModel";
		addAnnotation
		  (this,
		   source,
		   new String[]
		   {
			   "documentation", "The model of a rainwater site: everything that is known and decided about it. Results are not part of it."
		   });
		addAnnotation
		  (rowEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A row of a table inside an element, such as a point of a curve. It has no identifier of its own: it is found through the element that holds it."
		   });
		addAnnotation
		  (elementEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Anything that can be pointed at: by a finding, a remark, an option or a link."
		   });
		addAnnotation
		  (getElement_Id(),
		   source,
		   new String[]
		   {
			   "documentation", "Identifier that never changes and is unique in the site, such as tank-3k9f: letters, digits, hyphen, dot and underscore, up to 64. The element\'s name may change; links and findings hold on to this."
		   });
		addAnnotation
		  (getElement_Note(),
		   source,
		   new String[]
		   {
			   "documentation", "Anything worth knowing about it, in plain words."
		   });
		addAnnotation
		  (namedElementEClass,
		   source,
		   new String[]
		   {
			   "documentation", "An element that people call by a name."
		   });
		addAnnotation
		  (getNamedElement_Name(),
		   source,
		   new String[]
		   {
			   "documentation", "Name as people on the site call it."
		   });
		addAnnotation
		  (componentEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A physical part of the system. Options and stages switch parts on and off."
		   });
		addAnnotation
		  (getComponent_InUse(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the part takes part in the calculations; a part not in use stays in the file. Default true."
		   });
		addAnnotation
		  (getComponent_Installed(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it was installed; not given means not known."
		   });
		addAnnotation
		  (getComponent_DrawingPlace(),
		   source,
		   new String[]
		   {
			   "documentation", "Horizontal place on the drawing, from the left edge of the site; not given means it is placed by the program. It has no effect on any result. Usual unit m."
		   });
		addAnnotation
		  (receiverEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A part that roof water can flow into."
		   });
		addAnnotation
		  (conduitEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A part that roof water flows through on its way to one next part."
		   });
		addAnnotation
		  (getConduit_DrainsTo(),
		   source,
		   new String[]
		   {
			   "documentation", "Part that the water flows into next; not given means the water is lost."
		   });
		addAnnotation
		  (pipeNodeEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A part that runs of pipe start or end at."
		   });
		addAnnotation
		  (siteEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A whole rainwater system: what it gathers, stores, moves, treats and uses, and what is known and decided about it."
		   });
		addAnnotation
		  (getSite_SchemaVersion(),
		   source,
		   new String[]
		   {
			   "documentation", "Version of the schema of the file that was read; this program writes 1, and 0 means never saved. Range from 0 upwards."
		   });
		addAnnotation
		  (getSite_Place(),
		   source,
		   new String[]
		   {
			   "documentation", "Where it is, in words."
		   });
		addAnnotation
		  (getSite_Latitude(),
		   source,
		   new String[]
		   {
			   "documentation", "Latitude, north positive; bears on the season names only. Usual unit deg. Range from -90 deg to 90 deg."
		   });
		addAnnotation
		  (getSite_Altitude(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the site datum above sea level. Usual unit m. Range from -430 m to 5500 m. Default 0 m (sea level assumed; enter the real one, for it bears on suction, boiling and air pressure)."
		   });
		addAnnotation
		  (getSite_WaterTemperatureMin(),
		   source,
		   new String[]
		   {
			   "documentation", "Coldest water in a year. Usual unit degC. Range from 0 degC to 45 degC. Default 10 degC (common practice, no source)."
		   });
		addAnnotation
		  (getSite_WaterTemperatureUsual(),
		   source,
		   new String[]
		   {
			   "documentation", "Usual temperature of the water. Usual unit degC. Range from 0 degC to 45 degC. Default 20 degC (common practice, no source)."
		   });
		addAnnotation
		  (getSite_WaterTemperatureMax(),
		   source,
		   new String[]
		   {
			   "documentation", "Warmest water in a year; suction is checked with it. Usual unit degC. Range from 0 degC to 60 degC. Default 30 degC (common practice, no source)."
		   });
		addAnnotation
		  (getSite_Currency(),
		   source,
		   new String[]
		   {
			   "documentation", "Three-letter code of the currency of all amounts in this file. Default cur."
		   });
		addAnnotation
		  (getSite_PreferredUnits(),
		   source,
		   new String[]
		   {
			   "documentation", "Units that results are shown in."
		   });
		addAnnotation
		  (getSite_Author(),
		   source,
		   new String[]
		   {
			   "documentation", "Who answers for this design."
		   });
		addAnnotation
		  (getSite_Client(),
		   source,
		   new String[]
		   {
			   "documentation", "For whom the system is."
		   });
		addAnnotation
		  (getSite_Created(),
		   source,
		   new String[]
		   {
			   "documentation", "Day the design was begun."
		   });
		addAnnotation
		  (getSite_Rain(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the rain record comes from."
		   });
		addAnnotation
		  (getSite_Target(),
		   source,
		   new String[]
		   {
			   "documentation", "What the system must achieve, and the money there is for it."
		   });
		addAnnotation
		  (getSite_Roofs(),
		   source,
		   new String[]
		   {
			   "documentation", "Roofs that gather rain."
		   });
		addAnnotation
		  (getSite_Gutters(),
		   source,
		   new String[]
		   {
			   "documentation", "Gutters."
		   });
		addAnnotation
		  (getSite_Downpipes(),
		   source,
		   new String[]
		   {
			   "documentation", "Downpipes from gutters to the ground."
		   });
		addAnnotation
		  (getSite_Screens(),
		   source,
		   new String[]
		   {
			   "documentation", "Screens that hold back leaves and insects on the way to a tank."
		   });
		addAnnotation
		  (getSite_Diverters(),
		   source,
		   new String[]
		   {
			   "documentation", "Devices that throw away the first rain of a storm."
		   });
		addAnnotation
		  (getSite_Tanks(),
		   source,
		   new String[]
		   {
			   "documentation", "Tanks."
		   });
		addAnnotation
		  (getSite_TankLinks(),
		   source,
		   new String[]
		   {
			   "documentation", "How tanks share water."
		   });
		addAnnotation
		  (getSite_Junctions(),
		   source,
		   new String[]
		   {
			   "documentation", "Places where runs of pipe meet."
		   });
		addAnnotation
		  (getSite_PipeRuns(),
		   source,
		   new String[]
		   {
			   "documentation", "Runs of pipe."
		   });
		addAnnotation
		  (getSite_Pumps(),
		   source,
		   new String[]
		   {
			   "documentation", "Pumps."
		   });
		addAnnotation
		  (getSite_PressureVessels(),
		   source,
		   new String[]
		   {
			   "documentation", "Pressure vessels."
		   });
		addAnnotation
		  (getSite_Taps(),
		   source,
		   new String[]
		   {
			   "documentation", "Taps and other outlets."
		   });
		addAnnotation
		  (getSite_Calendars(),
		   source,
		   new String[]
		   {
			   "documentation", "Calendars that uses follow."
		   });
		addAnnotation
		  (getSite_Uses(),
		   source,
		   new String[]
		   {
			   "documentation", "What water is used for, by whom and how much."
		   });
		addAnnotation
		  (getSite_Rationing(),
		   source,
		   new String[]
		   {
			   "documentation", "Rules by which use is cut when water is short."
		   });
		addAnnotation
		  (getSite_TopUps(),
		   source,
		   new String[]
		   {
			   "documentation", "Water that can be brought from outside."
		   });
		addAnnotation
		  (getSite_RawWater(),
		   source,
		   new String[]
		   {
			   "documentation", "What the stored water is like before any treatment."
		   });
		addAnnotation
		  (getSite_Trains(),
		   source,
		   new String[]
		   {
			   "documentation", "Treatment trains."
		   });
		addAnnotation
		  (getSite_Costs(),
		   source,
		   new String[]
		   {
			   "documentation", "What things cost."
		   });
		addAnnotation
		  (getSite_Alternatives(),
		   source,
		   new String[]
		   {
			   "documentation", "Other ways to get the same water, for comparison."
		   });
		addAnnotation
		  (getSite_Economy(),
		   source,
		   new String[]
		   {
			   "documentation", "Money matters that hold for the whole site."
		   });
		addAnnotation
		  (getSite_Stages(),
		   source,
		   new String[]
		   {
			   "documentation", "Dated steps in which the system is built up."
		   });
		addAnnotation
		  (getSite_Options(),
		   source,
		   new String[]
		   {
			   "documentation", "Sets of changes to weigh against the design as it stands."
		   });
		addAnnotation
		  (getSite_Upkeep(),
		   source,
		   new String[]
		   {
			   "documentation", "Recurring work."
		   });
		addAnnotation
		  (getSite_SafetyPlan(),
		   source,
		   new String[]
		   {
			   "documentation", "Water safety plan: hazards and what keeps them in check."
		   });
		addAnnotation
		  (getSite_Inspections(),
		   source,
		   new String[]
		   {
			   "documentation", "Sanitary inspections that were made."
		   });
		addAnnotation
		  (getSite_Readings(),
		   source,
		   new String[]
		   {
			   "documentation", "Values that were read on the site."
		   });
		addAnnotation
		  (getSite_WaterTests(),
		   source,
		   new String[]
		   {
			   "documentation", "Tests of the water."
		   });
		addAnnotation
		  (getSite_Incidents(),
		   source,
		   new String[]
		   {
			   "documentation", "Things that went wrong."
		   });
		addAnnotation
		  (getSite_Scheme(),
		   source,
		   new String[]
		   {
			   "documentation", "How a system that several households share is run."
		   });
		addAnnotation
		  (getSite_Remarks(),
		   source,
		   new String[]
		   {
			   "documentation", "Remarks and sign-offs of reviewers."
		   });
		addAnnotation
		  (getSite_Extensions(),
		   source,
		   new String[]
		   {
			   "documentation", "Data of plug-ins; kept even when the plug-in is absent."
		   });
		addAnnotation
		  (targetEClass,
		   source,
		   new String[]
		   {
			   "documentation", "What the system must achieve."
		   });
		addAnnotation
		  (getTarget_TimeReliability(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the days with demand on which all of it is met. Usual unit %. Range from 0 to 1. Default 95 % (a choice of this program; agree it with the people who live on the water)."
		   });
		addAnnotation
		  (getTarget_VolumetricReliability(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the demanded volume that is supplied. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getTarget_LongestShortage(),
		   source,
		   new String[]
		   {
			   "documentation", "Longest run of days with a shortage that is bearable. Usual unit d. Range from 0 d to 3660 d."
		   });
		addAnnotation
		  (getTarget_Reserve(),
		   source,
		   new String[]
		   {
			   "documentation", "Days of use that should always be left as a reserve. Usual unit d. Range from 0 d to 3660 d."
		   });
		addAnnotation
		  (getTarget_PumpOutage(),
		   source,
		   new String[]
		   {
			   "documentation", "Time without pump or power that the overhead tank must bridge. Usual unit d. Range from 0 d to 366 d."
		   });
		addAnnotation
		  (getTarget_Confidence(),
		   source,
		   new String[]
		   {
			   "documentation", "Confidence level of intervals. Usual unit %. Range from 0.5 to 0.999. Default 90 % (common practice, no source)."
		   });
		addAnnotation
		  (getTarget_Budget(),
		   source,
		   new String[]
		   {
			   "documentation", "Money there is for building. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getTarget_InfectionTarget(),
		   source,
		   new String[]
		   {
			   "documentation", "Highest chance of infection for each person and year. Range from 0 to 1. Default 0.0001 (from memory, verify against Regli et al. 1991, Modeling the risk from Giardia and viruses in drinking water)."
		   });
		addAnnotation
		  (getTarget_BurdenTarget(),
		   source,
		   new String[]
		   {
			   "documentation", "Highest burden of disease, healthy years lost for each person and year (DALY). Range from 0 to 1. Default 0.000001 (WHO Guidelines for drinking-water quality, as quoted by Australian Drinking Water Guidelines A3.4)."
		   });
		addAnnotation
		  (rainSourceEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Where the rain record comes from and how it is read, mended and changed."
		   });
		addAnnotation
		  (getRainSource_File(),
		   source,
		   new String[]
		   {
			   "documentation", "File of the record, as a path from the folder of the site file, with forward slashes, not leaving that folder."
		   });
		addAnnotation
		  (getRainSource_Format(),
		   source,
		   new String[]
		   {
			   "documentation", "How the file is written."
		   });
		addAnnotation
		  (getRainSource_DateColumn(),
		   source,
		   new String[]
		   {
			   "documentation", "Name of the date column of a CSV file; not given means found."
		   });
		addAnnotation
		  (getRainSource_DepthColumn(),
		   source,
		   new String[]
		   {
			   "documentation", "Name of the depth column of a CSV file; not given means found."
		   });
		addAnnotation
		  (getRainSource_DatePattern(),
		   source,
		   new String[]
		   {
			   "documentation", "Pattern of the dates of a CSV file, such as dd/MM/yyyy; not given means found."
		   });
		addAnnotation
		  (getRainSource_Delimiter(),
		   source,
		   new String[]
		   {
			   "documentation", "Character between the columns of a CSV file; not given means found."
		   });
		addAnnotation
		  (getRainSource_DecimalComma(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether depths of a CSV file have a decimal comma."
		   });
		addAnnotation
		  (getRainSource_DepthUnit(),
		   source,
		   new String[]
		   {
			   "documentation", "Unit of the depths."
		   });
		addAnnotation
		  (getRainSource_GapMethod(),
		   source,
		   new String[]
		   {
			   "documentation", "What is done with missing days."
		   });
		addAnnotation
		  (getRainSource_FirstDay(),
		   source,
		   new String[]
		   {
			   "documentation", "First day of the record to use; not given means all."
		   });
		addAnnotation
		  (getRainSource_LastDay(),
		   source,
		   new String[]
		   {
			   "documentation", "Last day of the record to use; not given means all."
		   });
		addAnnotation
		  (getRainSource_Station(),
		   source,
		   new String[]
		   {
			   "documentation", "Name of the station, who keeps it, and terms of use."
		   });
		addAnnotation
		  (getRainSource_StationAltitude(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the station above sea level. Usual unit m. Range from -430 m to 5500 m."
		   });
		addAnnotation
		  (getRainSource_Distance(),
		   source,
		   new String[]
		   {
			   "documentation", "Distance of the station from the site. Usual unit m. Range from 0 m to 20000 km."
		   });
		addAnnotation
		  (getRainSource_DonorFile(),
		   source,
		   new String[]
		   {
			   "documentation", "File of another record that fills gaps or stands in for a missing one; path as for file."
		   });
		addAnnotation
		  (getRainSource_DonorStation(),
		   source,
		   new String[]
		   {
			   "documentation", "Name of the donor station and terms of use."
		   });
		addAnnotation
		  (getRainSource_ScaleToNormals(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the record is scaled month by month to the normals below."
		   });
		addAnnotation
		  (getRainSource_Normals(),
		   source,
		   new String[]
		   {
			   "documentation", "Normals of this place by month."
		   });
		addAnnotation
		  (getRainSource_Synthesize(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether synthetic rain fitted to the record gives a second answer beside it. Without a record, rain invented from the normals drives the calculations in any case."
		   });
		addAnnotation
		  (getRainSource_SyntheticYears(),
		   source,
		   new String[]
		   {
			   "documentation", "Years of the synthetic record. Range from 1 to 1000. Default 100."
		   });
		addAnnotation
		  (getRainSource_Seed(),
		   source,
		   new String[]
		   {
			   "documentation", "Seed of the random numbers, so that the same site gives the same record. Default 1."
		   });
		addAnnotation
		  (getRainSource_Stress(),
		   source,
		   new String[]
		   {
			   "documentation", "Change of climate to test the design against."
		   });
		addAnnotation
		  (getRainSource_Intensities(),
		   source,
		   new String[]
		   {
			   "documentation", "Design intensities that were entered; without them they are derived from the record."
		   });
		addAnnotation
		  (getRainSource_ReturnPeriod(),
		   source,
		   new String[]
		   {
			   "documentation", "Return period of the storm that gutters are sized for. Usual unit yr. Range above 1 yr to 1000 yr. Default 5 yr (common practice for eaves gutters, no source; local code rules)."
		   });
		addAnnotation
		  (getRainSource_PeakDuration(),
		   source,
		   new String[]
		   {
			   "documentation", "Duration of the storm that gutters are sized for. Usual unit min. Range from 1 min to 1440 min. Default 5 min (common practice for roofs, no source; local code rules)."
		   });
		addAnnotation
		  (getRainSource_DayToShortRatio(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of a storm of the peak duration as a share of the depth of the day; not given means the calculation\'s stated default. Range above 0 to 1."
		   });
		addAnnotation
		  (getRainSource_DayFactor(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of the wettest 24 hours over that of a day read at a fixed hour. Range from 1 to 2. Default 1.13 (from memory, verify against D. M. Hershfield and W. T. Wilson 1958, in WMO-No. 168, Guide to Hydrological Practices)."
		   });
		addAnnotation
		  (monthlyNormalEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Normal rain of one month."
		   });
		addAnnotation
		  (getMonthlyNormal_Month(),
		   source,
		   new String[]
		   {
			   "documentation", "Month of the year, 1 for January. Range from 1 to 12."
		   });
		addAnnotation
		  (getMonthlyNormal_Depth(),
		   source,
		   new String[]
		   {
			   "documentation", "Mean depth of the month. Usual unit mm. Range from 0 mm to 5000 mm."
		   });
		addAnnotation
		  (getMonthlyNormal_WetDays(),
		   source,
		   new String[]
		   {
			   "documentation", "Mean number of days with at least 1 mm. Range from 0 to 31."
		   });
		addAnnotation
		  (getMonthlyNormal_Evaporation(),
		   source,
		   new String[]
		   {
			   "documentation", "Mean reference evaporation of the month. Usual unit mm. Range from 0 mm to 1000 mm."
		   });
		addAnnotation
		  (climateStressEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A change of climate: rain scaled, dry season made longer."
		   });
		addAnnotation
		  (getClimateStress_DepthFactor(),
		   source,
		   new String[]
		   {
			   "documentation", "Factor on the depth of every day, unless a season below gives its own. Range from 0 to 5. Default 1 (no change)."
		   });
		addAnnotation
		  (getClimateStress_DrySeasonLonger(),
		   source,
		   new String[]
		   {
			   "documentation", "Days by which the dry season lasts longer: rain of that many days after it is dropped. Usual unit d. Range from 0 d to 120 d."
		   });
		addAnnotation
		  (getClimateStress_Seasons(),
		   source,
		   new String[]
		   {
			   "documentation", "Factors for parts of the year."
		   });
		addAnnotation
		  (seasonFactorEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A factor on the rain of a part of the year."
		   });
		addAnnotation
		  (getSeasonFactor_From(),
		   source,
		   new String[]
		   {
			   "documentation", "First day."
		   });
		addAnnotation
		  (getSeasonFactor_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Last day; before the first day it runs over the new year."
		   });
		addAnnotation
		  (getSeasonFactor_Factor(),
		   source,
		   new String[]
		   {
			   "documentation", "Factor on the depth. Range from 0 to 5."
		   });
		addAnnotation
		  (intensityPointEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Design intensity of a duration and return period."
		   });
		addAnnotation
		  (getIntensityPoint_Duration(),
		   source,
		   new String[]
		   {
			   "documentation", "Duration of the storm. Usual unit min. Range from 1 min to 4320 min."
		   });
		addAnnotation
		  (getIntensityPoint_ReturnPeriod(),
		   source,
		   new String[]
		   {
			   "documentation", "Return period. Usual unit yr. Range from 1 yr to 1000 yr."
		   });
		addAnnotation
		  (getIntensityPoint_Intensity(),
		   source,
		   new String[]
		   {
			   "documentation", "Mean intensity over the duration. Usual unit mm/h. Range from 0 mm/h to 2000 mm/h."
		   });
		addAnnotation
		  (roofEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A roof or other surface that gathers rain."
		   });
		addAnnotation
		  (getRoof_PlanArea(),
		   source,
		   new String[]
		   {
			   "documentation", "Area seen from above, not along the slope: rain falls on this. Usual unit m2. Range above 0 m2 to 100000 m2."
		   });
		addAnnotation
		  (getRoof_Pitch(),
		   source,
		   new String[]
		   {
			   "documentation", "Slope against the horizontal. Usual unit deg. Range from 0 deg to 80 deg."
		   });
		addAnnotation
		  (getRoof_EavesLength(),
		   source,
		   new String[]
		   {
			   "documentation", "Length of the eaves that gutters run along. Usual unit m. Range from 0 m to 1000 m."
		   });
		addAnnotation
		  (getRoof_SlopeHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the ridge above the eaves; bears on wind-driven rain in storms. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getRoof_EavesLevel(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the eaves above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (getRoof_Material(),
		   source,
		   new String[]
		   {
			   "documentation", "What it is covered with."
		   });
		addAnnotation
		  (getRoof_RunoffCoefficient(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the rain that runs off. Usual unit %. Range from 0 to 1. Default 80 % (common value for hard roofs; compare India Water Portal training table as quoted: metal 70 to 90 %, tile 80 to 90 %, concrete 60 to 80 %)."
		   });
		addAnnotation
		  (getRoof_RunoffBasis(),
		   source,
		   new String[]
		   {
			   "documentation", "What losses the coefficient already holds."
		   });
		addAnnotation
		  (getRoof_InitialLoss(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth that wets the roof and never runs off, each wet day. Usual unit mm. Range from 0 mm to 20 mm. Default 0 mm (none taken off unless given)."
		   });
		addAnnotation
		  (getRoof_CollectionEfficiency(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the runoff that reaches the tank past gutters and screens; not given means computed from the gutters or taken as whole. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getRoof_PeakRunoff(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the rain that runs off in the design storm. Usual unit %. Range from 0 to 1. Default 100 % (common practice for storm flow of roofs, no source)."
		   });
		addAnnotation
		  (getRoof_Hazards(),
		   source,
		   new String[]
		   {
			   "documentation", "What is near or on it that spoils the water."
		   });
		addAnnotation
		  (getRoof_Age(),
		   source,
		   new String[]
		   {
			   "documentation", "Age of the covering. Usual unit yr. Range from 0 yr to 300 yr."
		   });
		addAnnotation
		  (getRoof_Drains(),
		   source,
		   new String[]
		   {
			   "documentation", "Where its water goes; none means the water is lost."
		   });
		addAnnotation
		  (roofDrainEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A share of a roof\'s water and where it goes."
		   });
		addAnnotation
		  (getRoofDrain_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Gutter, downpipe, screen, diverter or tank that takes the water."
		   });
		addAnnotation
		  (getRoofDrain_Share(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the roof; not given means equal parts of what the others leave. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (gutterEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A gutter along an eaves."
		   });
		addAnnotation
		  (getGutter_Profile(),
		   source,
		   new String[]
		   {
			   "documentation", "Shape of its cross-section."
		   });
		addAnnotation
		  (getGutter_Width(),
		   source,
		   new String[]
		   {
			   "documentation", "Width at the top. Usual unit mm. Range above 0 mm to 2000 mm."
		   });
		addAnnotation
		  (getGutter_SoleWidth(),
		   source,
		   new String[]
		   {
			   "documentation", "Width at the bottom of a trapezium. Usual unit mm. Range from 0 mm to 2000 mm."
		   });
		addAnnotation
		  (getGutter_Depth(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth; not given for a half-round one means half the width. Usual unit mm. Range above 0 mm to 1000 mm."
		   });
		addAnnotation
		  (getGutter_Freeboard(),
		   source,
		   new String[]
		   {
			   "documentation", "Part of the depth kept free against splash. Usual unit mm. Range from 0 mm to 500 mm."
		   });
		addAnnotation
		  (getGutter_Length(),
		   source,
		   new String[]
		   {
			   "documentation", "Length. Usual unit m. Range above 0 m to 500 m."
		   });
		addAnnotation
		  (getGutter_Slope(),
		   source,
		   new String[]
		   {
			   "documentation", "Fall along its length. Usual unit %. Range from 0 to 0.2. Default 0 % (level gutter assumed, on the safe side)."
		   });
		addAnnotation
		  (getGutter_Roughness(),
		   source,
		   new String[]
		   {
			   "documentation", "Manning roughness. Range from 0.005 to 0.1. Default 0.012 (Manning n between 0.010 and 0.015, Warwick Development Technology Unit, gutter notes)."
		   });
		addAnnotation
		  (getGutter_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of its sole at the lower end above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (getGutter_Bends(),
		   source,
		   new String[]
		   {
			   "documentation", "Number of corners. Range from 0 to 100."
		   });
		addAnnotation
		  (getGutter_LeafGuard(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether a guard keeps leaves out."
		   });
		addAnnotation
		  (getGutter_LastCleaned(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it was last cleaned."
		   });
		addAnnotation
		  (getGutter_Outlets(),
		   source,
		   new String[]
		   {
			   "documentation", "Where water leaves it."
		   });
		addAnnotation
		  (gutterOutletEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A hole or end by which water leaves a gutter."
		   });
		addAnnotation
		  (getGutterOutlet_Position(),
		   source,
		   new String[]
		   {
			   "documentation", "Distance from the upper end of the gutter; not given means the lower end. Usual unit m. Range from 0 m to 500 m."
		   });
		addAnnotation
		  (getGutterOutlet_Shape(),
		   source,
		   new String[]
		   {
			   "documentation", "Shape of the outlet."
		   });
		addAnnotation
		  (getGutterOutlet_Diameter(),
		   source,
		   new String[]
		   {
			   "documentation", "Diameter at the gutter\'s sole. Usual unit mm. Range above 0 mm to 1000 mm."
		   });
		addAnnotation
		  (getGutterOutlet_Strainer(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether a strainer covers it."
		   });
		addAnnotation
		  (getGutterOutlet_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Downpipe or other part that takes the water; not given means lost."
		   });
		addAnnotation
		  (downpipeEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A pipe that brings water down from a gutter."
		   });
		addAnnotation
		  (getDownpipe_Bore(),
		   source,
		   new String[]
		   {
			   "documentation", "Inside diameter. Usual unit mm. Range above 0 mm to 1000 mm."
		   });
		addAnnotation
		  (getDownpipe_Length(),
		   source,
		   new String[]
		   {
			   "documentation", "Length. Usual unit m. Range from 0 m to 200 m."
		   });
		addAnnotation
		  (getDownpipe_FillShare(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of its section that may run full. Usual unit %. Range above 0 to 1. Default 33 % (from memory, verify against EN 12056-3:2000, filling degree of downpipes)."
		   });
		addAnnotation
		  (getDownpipe_Wet(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether it runs under ground and stays full between storms."
		   });
		addAnnotation
		  (screenEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A screen that holds back leaves, insects or grit."
		   });
		addAnnotation
		  (getScreen_Mesh(),
		   source,
		   new String[]
		   {
			   "documentation", "Width of its openings. Usual unit mm. Range above 0 mm to 50 mm."
		   });
		addAnnotation
		  (getScreen_Area(),
		   source,
		   new String[]
		   {
			   "documentation", "Whole area of the screen. Usual unit cm2. Range above 0 cm2 to 10 m2."
		   });
		addAnnotation
		  (getScreen_OpenShare(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the area that is open when clean. Usual unit %. Range above 0 to 1."
		   });
		addAnnotation
		  (getScreen_BlockedShare(),
		   source,
		   new String[]
		   {
			   "documentation", "Share that is taken as blocked in the design storm. Usual unit %. Range from 0 to 1. Default 50 % (common practice, no source)."
		   });
		addAnnotation
		  (getScreen_LostShare(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the water that a self-cleaning screen throws off. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getScreen_RimHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of water that stands over it before it spills. Usual unit mm. Range above 0 mm to 1 m. Default 20 mm (assumed; replace with the height of the rim)."
		   });
		addAnnotation
		  (firstFlushDiverterEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A device that keeps the first and dirtiest rain of a storm out of the tank."
		   });
		addAnnotation
		  (getFirstFlushDiverter_Depth(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of rain on the roof that is thrown away; used when no volume is given. Usual unit mm. Range from 0 mm to 20 mm."
		   });
		addAnnotation
		  (getFirstFlushDiverter_Volume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume that is thrown away. Usual unit L. Range from 0 L to 20 m3."
		   });
		addAnnotation
		  (getFirstFlushDiverter_ResetDryDays(),
		   source,
		   new String[]
		   {
			   "documentation", "Dry days after which it acts anew. Usual unit d. Range from 0 d to 365 d. Default 3 d (common practice, no source)."
		   });
		addAnnotation
		  (getFirstFlushDiverter_DrainTime(),
		   source,
		   new String[]
		   {
			   "documentation", "Time in which it drains by itself; not given means it is emptied by hand. Usual unit h. Range from 0 h to 720 h."
		   });
		addAnnotation
		  (getFirstFlushDiverter_DrainOrifice(),
		   source,
		   new String[]
		   {
			   "documentation", "Diameter of its drain hole. Usual unit mm. Range from 0 mm to 100 mm."
		   });
		addAnnotation
		  (getFirstFlushDiverter_Height(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of its chamber. Usual unit m. Range above 0 m to 20 m. Default 1 m (assumed; replace with its height)."
		   });
		addAnnotation
		  (tankEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A tank."
		   });
		addAnnotation
		  (getTank_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What sort of tank it is."
		   });
		addAnnotation
		  (getTank_Capacity(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume up to the overflow. Usual unit m3. Range above 0 m3 to 1000000 m3."
		   });
		addAnnotation
		  (getTank_DeadVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume below the outlet that cannot be drawn, within the capacity. Usual unit m3. Range from 0 m3 to 1000000 m3. Default 0 m3 (none unless given)."
		   });
		addAnnotation
		  (getTank_ReserveVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume above the dead one that is kept behind a lower outlet as a reserve. Usual unit m3. Range from 0 m3 to 1000000 m3."
		   });
		addAnnotation
		  (getTank_BaseLevel(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of its floor above the site datum. Usual unit m. Range from -500 m to 9000 m. Default 0 m (the site datum)."
		   });
		addAnnotation
		  (getTank_Height(),
		   source,
		   new String[]
		   {
			   "documentation", "Inside height from floor to roof. Usual unit m. Range above 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_OutletHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the outlet above the floor. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_ReserveOutletHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the outlet above the floor that leaves the reserve. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_OverflowHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the overflow\'s lip above the floor. Usual unit m. Range above 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_InletHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the inlet above the floor; a pump lifts to here. Usual unit m. Range from 0 m to 60 m."
		   });
		addAnnotation
		  (getTank_LevelVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Curve of volume against height of water, rising; without it the tank is taken as upright with equal section."
		   });
		addAnnotation
		  (getTank_StartHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Water height above the floor at which the pump that fills it starts. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_StopHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Water height above the floor at which the pump that fills it stops. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_CurrentHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Water height above the floor today. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getTank_CurrentDate(),
		   source,
		   new String[]
		   {
			   "documentation", "Day for which the current height holds."
		   });
		addAnnotation
		  (getTank_PlaceInGround(),
		   source,
		   new String[]
		   {
			   "documentation", "How it stands."
		   });
		addAnnotation
		  (getTank_Cover(),
		   source,
		   new String[]
		   {
			   "documentation", "How its top is closed."
		   });
		addAnnotation
		  (getTank_Material(),
		   source,
		   new String[]
		   {
			   "documentation", "What its wall is made of."
		   });
		addAnnotation
		  (getTank_Diameter(),
		   source,
		   new String[]
		   {
			   "documentation", "Inside diameter of a round tank. Usual unit m. Range above 0 m to 200 m."
		   });
		addAnnotation
		  (getTank_Length(),
		   source,
		   new String[]
		   {
			   "documentation", "Inside length of a rectangular tank. Usual unit m. Range above 0 m to 500 m."
		   });
		addAnnotation
		  (getTank_Width(),
		   source,
		   new String[]
		   {
			   "documentation", "Inside width of a rectangular tank. Usual unit m. Range above 0 m to 500 m."
		   });
		addAnnotation
		  (getTank_OpenArea(),
		   source,
		   new String[]
		   {
			   "documentation", "Water surface open to the sun; not given means none for a covered tank. Usual unit m2. Range from 0 m2 to 100000 m2."
		   });
		addAnnotation
		  (getTank_EvaporationFactor(),
		   source,
		   new String[]
		   {
			   "documentation", "Evaporation from the open surface over reference evaporation. Range from 0 to 2. Default 1.05 (from memory, verify against FAO Irrigation and Drainage Paper 56, Table 12)."
		   });
		addAnnotation
		  (getTank_Leakage(),
		   source,
		   new String[]
		   {
			   "documentation", "Water lost by leaks when half full. Usual unit L/d. Range from 0 L/d to 100 m3/d."
		   });
		addAnnotation
		  (getTank_OverflowDiameter(),
		   source,
		   new String[]
		   {
			   "documentation", "Inside diameter of the overflow pipe. Usual unit mm. Range from 0 mm to 1000 mm."
		   });
		addAnnotation
		  (getTank_OverflowsTo(),
		   source,
		   new String[]
		   {
			   "documentation", "Where spilled water goes; not given means away."
		   });
		addAnnotation
		  (getTank_VentArea(),
		   source,
		   new String[]
		   {
			   "documentation", "Open area of vents. Usual unit cm2. Range from 0 cm2 to 10 m2."
		   });
		addAnnotation
		  (getTank_ScreenMesh(),
		   source,
		   new String[]
		   {
			   "documentation", "Mesh of the screens at inlet, overflow and vent; 1.2 mm and finer keeps mosquitoes out, common practice. Usual unit mm. Range from 0 mm to 50 mm."
		   });
		addAnnotation
		  (getTank_FloatingIntake(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether water is drawn by a floating intake below the surface."
		   });
		addAnnotation
		  (getTank_CalmedInlet(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the inlet is calmed so that sludge is not stirred."
		   });
		addAnnotation
		  (getTank_LockedHatch(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the hatch is locked, so that nobody falls in and nobody fouls the water."
		   });
		addAnnotation
		  (getTank_LastCleaned(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it was last cleaned."
		   });
		addAnnotation
		  (getTank_Siting(),
		   source,
		   new String[]
		   {
			   "documentation", "What is known about the ground and surroundings."
		   });
		addAnnotation
		  (levelVolumePointEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A point of the curve of volume against height of water."
		   });
		addAnnotation
		  (getLevelVolumePoint_Height(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of water above the floor. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getLevelVolumePoint_Volume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume up to that height. Usual unit m3. Range from 0 m3 to 1000000 m3."
		   });
		addAnnotation
		  (sitingEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Ground and surroundings of a tank."
		   });
		addAnnotation
		  (getSiting_LatrineDistance(),
		   source,
		   new String[]
		   {
			   "documentation", "Distance to the nearest latrine or soakaway of foul water. Usual unit m. Range from 0 m to 10 km."
		   });
		addAnnotation
		  (getSiting_LatrineUphill(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether that latrine lies uphill."
		   });
		addAnnotation
		  (getSiting_RefuseDistance(),
		   source,
		   new String[]
		   {
			   "documentation", "Distance to the nearest refuse or animal pen. Usual unit m. Range from 0 m to 10 km."
		   });
		addAnnotation
		  (getSiting_GroundwaterDepth(),
		   source,
		   new String[]
		   {
			   "documentation", "Least depth of groundwater below the ground; bears on the uplift of an empty buried tank. Usual unit m. Range from 0 m to 500 m."
		   });
		addAnnotation
		  (getSiting_BurialDepth(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of its floor below the ground. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getSiting_BaseArea(),
		   source,
		   new String[]
		   {
			   "documentation", "Area that carries the weight. Usual unit m2. Range above 0 m2 to 100000 m2."
		   });
		addAnnotation
		  (getSiting_EmptyMass(),
		   source,
		   new String[]
		   {
			   "documentation", "Mass of the empty tank and its base. Usual unit kg. Range from 0 kg to 1000000000 kg."
		   });
		addAnnotation
		  (getSiting_SoilCover(),
		   source,
		   new String[]
		   {
			   "documentation", "Thickness of soil above it. Usual unit m. Range from 0 m to 20 m."
		   });
		addAnnotation
		  (getSiting_AllowedBearing(),
		   source,
		   new String[]
		   {
			   "documentation", "Bearing pressure that the ground may carry, as said by an engineer or a test. Usual unit kPa. Range above 0 kPa to 10000 kPa."
		   });
		addAnnotation
		  (getSiting_StandHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of the stand. Usual unit m. Range from 0 m to 100 m."
		   });
		addAnnotation
		  (getSiting_FoundationDistance(),
		   source,
		   new String[]
		   {
			   "documentation", "Distance of overflow and soakaway from the nearest foundation. Usual unit m. Range from 0 m to 10 km."
		   });
		addAnnotation
		  (getSiting_Soakaway(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether spilled water goes to a soakaway."
		   });
		addAnnotation
		  (getSiting_SoakawayLength(),
		   source,
		   new String[]
		   {
			   "documentation", "Length of the soakaway pit, inside. Usual unit m. Range from 0.2 m to 100 m."
		   });
		addAnnotation
		  (getSiting_SoakawayWidth(),
		   source,
		   new String[]
		   {
			   "documentation", "Width of the soakaway pit, inside. Usual unit m. Range from 0.2 m to 100 m."
		   });
		addAnnotation
		  (getSiting_SoakawayDepth(),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of the soakaway pit below the pipe that comes in. Usual unit m. Range from 0.2 m to 20 m."
		   });
		addAnnotation
		  (getSiting_SoakawayVoids(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the pit that water can fill: all of a hollow one, about 30 % in rubble. Usual unit %. Range from 5 % to 100 %. Default 30 % (common practice for rubble, no source)."
		   });
		addAnnotation
		  (getSiting_Infiltration(),
		   source,
		   new String[]
		   {
			   "documentation", "Rate at which the soil takes in water, found by a trial pit. Usual unit mm/h. Range from 0.0036 mm/h to 36000 mm/h."
		   });
		addAnnotation
		  (getSiting_TapDrain(),
		   source,
		   new String[]
		   {
			   "documentation", "Steady flow that tap drains lead to the soakaway besides. Usual unit L/min. Range from 0 L/min to 1 m3/s."
		   });
		addAnnotation
		  (tankLinkEClass,
		   source,
		   new String[]
		   {
			   "documentation", "How two tanks share water."
		   });
		addAnnotation
		  (getTankLink_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "How they share it."
		   });
		addAnnotation
		  (getTankLink_From(),
		   source,
		   new String[]
		   {
			   "documentation", "First or upper tank."
		   });
		addAnnotation
		  (getTankLink_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Second or lower tank."
		   });
		addAnnotation
		  (getTankLink_SillHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Height above the first tank\'s floor below which no water passes. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getTankLink_MaxFlow(),
		   source,
		   new String[]
		   {
			   "documentation", "Most that can pass; not given means no limit. Usual unit L/s. Range from 0 L/s to 1000 L/s."
		   });
		addAnnotation
		  (getTankLink_DailyVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Most that is moved in a day by hand or transfer pump. Usual unit L/d. Range from 0 L/d to 10000 m3/d."
		   });
		addAnnotation
		  (junctionEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A place where runs of pipe meet."
		   });
		addAnnotation
		  (getJunction_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (pipeRunEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A run of pipe of one bore from one part to another."
		   });
		addAnnotation
		  (getPipeRun_Use(),
		   source,
		   new String[]
		   {
			   "documentation", "What it is for."
		   });
		addAnnotation
		  (getPipeRun_From(),
		   source,
		   new String[]
		   {
			   "documentation", "Part it starts at."
		   });
		addAnnotation
		  (getPipeRun_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Part it ends at."
		   });
		addAnnotation
		  (getPipeRun_Bore(),
		   source,
		   new String[]
		   {
			   "documentation", "True inside diameter. Usual unit mm. Range above 0 mm to 3000 mm."
		   });
		addAnnotation
		  (getPipeRun_Length(),
		   source,
		   new String[]
		   {
			   "documentation", "Length along the pipe. Usual unit m. Range from 0 m to 100 km."
		   });
		addAnnotation
		  (getPipeRun_Material(),
		   source,
		   new String[]
		   {
			   "documentation", "What it is made of."
		   });
		addAnnotation
		  (getPipeRun_WallThickness(),
		   source,
		   new String[]
		   {
			   "documentation", "Thickness of its wall; bears on water hammer. Usual unit mm. Range above 0 mm to 200 mm."
		   });
		addAnnotation
		  (getPipeRun_ClosureTime(),
		   source,
		   new String[]
		   {
			   "documentation", "Time in which the quickest valve of the run closes, or its check valve; bears on water hammer. Usual unit s. Range from 0 s to 3600 s."
		   });
		addAnnotation
		  (getPipeRun_PressureClass(),
		   source,
		   new String[]
		   {
			   "documentation", "Pressure it is rated for. Usual unit kPa. Range above 0 kPa to 100000 kPa."
		   });
		addAnnotation
		  (getPipeRun_Roughness(),
		   source,
		   new String[]
		   {
			   "documentation", "Roughness of the wall; not given means that of the material. Usual unit mm. Range from 0 mm to 50 mm."
		   });
		addAnnotation
		  (getPipeRun_AgedRoughness(),
		   source,
		   new String[]
		   {
			   "documentation", "Roughness when old; not given means that of the material. Usual unit mm. Range from 0 mm to 50 mm."
		   });
		addAnnotation
		  (getPipeRun_Fittings(),
		   source,
		   new String[]
		   {
			   "documentation", "Fittings, valves, entrance and exit."
		   });
		addAnnotation
		  (getPipeRun_Profile(),
		   source,
		   new String[]
		   {
			   "documentation", "Heights along the run; without it a straight line."
		   });
		addAnnotation
		  (fittingEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Fittings of one kind in a run."
		   });
		addAnnotation
		  (getFitting_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "Kind."
		   });
		addAnnotation
		  (getFitting_Count(),
		   source,
		   new String[]
		   {
			   "documentation", "How many. Range from 0 to 10000. Default 1."
		   });
		addAnnotation
		  (getFitting_LossCoefficient(),
		   source,
		   new String[]
		   {
			   "documentation", "Loss coefficient K of one, in velocity heads; not given means that of the kind. Range from 0 to 100000."
		   });
		addAnnotation
		  (profilePointEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Height of a pipe at a place along it."
		   });
		addAnnotation
		  (getProfilePoint_Distance(),
		   source,
		   new String[]
		   {
			   "documentation", "Distance from the start of the run. Usual unit m. Range from 0 m to 100 km."
		   });
		addAnnotation
		  (getProfilePoint_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (pumpDataEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Measured or published data of a pump."
		   });
		addAnnotation
		  (getPumpData_Points(),
		   source,
		   new String[]
		   {
			   "documentation", "Points of the curve, by rising flow; at least three to compute with."
		   });
		addAnnotation
		  (getPumpData_MotorEfficiency(),
		   source,
		   new String[]
		   {
			   "documentation", "Efficiency of the motor; needed for energy when input power is not measured. Usual unit %. Range above 0 to 1."
		   });
		addAnnotation
		  (getPumpData_RatedSpeed(),
		   source,
		   new String[]
		   {
			   "documentation", "Speed at which the points were measured. Usual unit rpm. Range above 0 rpm to 60000 rpm."
		   });
		addAnnotation
		  (getPumpData_RatedPower(),
		   source,
		   new String[]
		   {
			   "documentation", "Power on the motor\'s plate. Usual unit W. Range above 0 W to 10 MW."
		   });
		addAnnotation
		  (getPumpData_DischargeBore(),
		   source,
		   new String[]
		   {
			   "documentation", "Diameter of the outlet. Usual unit mm. Range above 0 mm to 3000 mm."
		   });
		addAnnotation
		  (getPumpData_MinSubmergence(),
		   source,
		   new String[]
		   {
			   "documentation", "Least depth of water over the inlet. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getPumpData_MaxStarts(),
		   source,
		   new String[]
		   {
			   "documentation", "Most starts that the motor bears in an hour. Usual unit 1/yr. Range from 0 to 3600 1/h."
		   });
		addAnnotation
		  (getPumpData_Price(),
		   source,
		   new String[]
		   {
			   "documentation", "Price. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getPumpData_DataSource(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the data come from, and whether they are measured, published or invented."
		   });
		addAnnotation
		  (pumpPointEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A point of a pump\'s curve."
		   });
		addAnnotation
		  (getPumpPoint_Flow(),
		   source,
		   new String[]
		   {
			   "documentation", "Flow. Usual unit L/s. Range from 0 L/s to 10000 L/s."
		   });
		addAnnotation
		  (getPumpPoint_Head(),
		   source,
		   new String[]
		   {
			   "documentation", "Head added. Usual unit m. Range from 0 m to 10000 m."
		   });
		addAnnotation
		  (getPumpPoint_Efficiency(),
		   source,
		   new String[]
		   {
			   "documentation", "Efficiency of the pump without motor. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getPumpPoint_NpshRequired(),
		   source,
		   new String[]
		   {
			   "documentation", "Net positive suction head required. Usual unit m. Range from 0 m to 1000 m."
		   });
		addAnnotation
		  (getPumpPoint_InputPower(),
		   source,
		   new String[]
		   {
			   "documentation", "Power taken by the motor. Usual unit W. Range from 0 W to 10 MW."
		   });
		addAnnotation
		  (pumpEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A pump, or several equal ones."
		   });
		addAnnotation
		  (getPump_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What sort of pump it is."
		   });
		addAnnotation
		  (getPump_Count(),
		   source,
		   new String[]
		   {
			   "documentation", "How many equal pumps there are. Range from 1 to 100. Default 1."
		   });
		addAnnotation
		  (getPump_Arrangement(),
		   source,
		   new String[]
		   {
			   "documentation", "How they work together."
		   });
		addAnnotation
		  (getPump_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height of its inlet above the site datum. Usual unit m. Range from -1000 m to 9000 m."
		   });
		addAnnotation
		  (getPump_SpeedRatio(),
		   source,
		   new String[]
		   {
			   "documentation", "Speed it runs at over the rated speed. Range above 0 to 2. Default 1 (rated speed)."
		   });
		addAnnotation
		  (getPump_CutOutHeight(),
		   source,
		   new String[]
		   {
			   "documentation", "Water height above the floor of the tank it draws from, at which it is switched off against running dry. Usual unit m. Range from 0 m to 50 m."
		   });
		addAnnotation
		  (getPump_FootValve(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether a foot valve holds its prime."
		   });
		addAnnotation
		  (getPump_EnergySource(),
		   source,
		   new String[]
		   {
			   "documentation", "What drives it."
		   });
		addAnnotation
		  (getPump_SupplyTimes(),
		   source,
		   new String[]
		   {
			   "documentation", "Hours in which there is power; none means always."
		   });
		addAnnotation
		  (getPump_OutageShare(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of days without power. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getPump_StrokeVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume of one stroke of a hand pump. Usual unit L. Range above 0 L to 100 L."
		   });
		addAnnotation
		  (getPump_StrokesPerMinute(),
		   source,
		   new String[]
		   {
			   "documentation", "Strokes in a minute of a hand pump. Range above 0 to 200."
		   });
		addAnnotation
		  (getPump_Candidates(),
		   source,
		   new String[]
		   {
			   "documentation", "Pumps that are weighed against it."
		   });
		addAnnotation
		  (pumpCandidateEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A pump that might be bought."
		   });
		addAnnotation
		  (getPumpCandidate_Model(),
		   source,
		   new String[]
		   {
			   "documentation", "Maker\'s or seller\'s name of it."
		   });
		addAnnotation
		  (getPumpCandidate_Chosen(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether it is the one decided for."
		   });
		addAnnotation
		  (supplyTimeEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A span of the day in which there is power or sun."
		   });
		addAnnotation
		  (getSupplyTime_From(),
		   source,
		   new String[]
		   {
			   "documentation", "Start."
		   });
		addAnnotation
		  (getSupplyTime_To(),
		   source,
		   new String[]
		   {
			   "documentation", "End; before the start it runs over midnight."
		   });
		addAnnotation
		  (getSupplyTime_Weekdays(),
		   source,
		   new String[]
		   {
			   "documentation", "Days on which it holds; none means every day."
		   });
		addAnnotation
		  (pressureVesselEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A vessel that keeps a pressure branch under pressure while the pump rests."
		   });
		addAnnotation
		  (getPressureVessel_Volume(),
		   source,
		   new String[]
		   {
			   "documentation", "Whole volume. Usual unit L. Range above 0 L to 100 m3."
		   });
		addAnnotation
		  (getPressureVessel_Precharge(),
		   source,
		   new String[]
		   {
			   "documentation", "Pressure of the air when empty of water. Usual unit kPa. Range from 0 kPa to 10000 kPa."
		   });
		addAnnotation
		  (getPressureVessel_CutIn(),
		   source,
		   new String[]
		   {
			   "documentation", "Pressure at which the pump starts. Usual unit kPa. Range from 0 kPa to 10000 kPa."
		   });
		addAnnotation
		  (getPressureVessel_CutOut(),
		   source,
		   new String[]
		   {
			   "documentation", "Pressure at which the pump stops. Usual unit kPa. Range from 0 kPa to 10000 kPa."
		   });
		addAnnotation
		  (getPressureVessel_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (tapEClass,
		   source,
		   new String[]
		   {
			   "documentation", "An outlet, or several equal ones side by side."
		   });
		addAnnotation
		  (getTap_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What kind it is."
		   });
		addAnnotation
		  (getTap_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (getTap_MinimumHead(),
		   source,
		   new String[]
		   {
			   "documentation", "Least pressure at which it works as it should. Usual unit m(head). Range from 0 m to 100 m. Default 1 m(head) (common practice for plain taps, no source)."
		   });
		addAnnotation
		  (getTap_DesignFlow(),
		   source,
		   new String[]
		   {
			   "documentation", "Flow of one outlet that people expect. Usual unit L/min. Range above 0 L/min to 10000 L/min."
		   });
		addAnnotation
		  (getTap_Orifice(),
		   source,
		   new String[]
		   {
			   "documentation", "Diameter of its opening; with it the flow follows from the pressure. Usual unit mm. Range above 0 mm to 500 mm."
		   });
		addAnnotation
		  (getTap_LossCoefficient(),
		   source,
		   new String[]
		   {
			   "documentation", "Loss coefficient K of the opened tap, referred to the bore of the run that feeds it. Range above 0 to 100000."
		   });
		addAnnotation
		  (getTap_Count(),
		   source,
		   new String[]
		   {
			   "documentation", "How many. Range from 1 to 1000. Default 1."
		   });
		addAnnotation
		  (getTap_OpenTogether(),
		   source,
		   new String[]
		   {
			   "documentation", "How many run at the same time in a peak; not given means all. Range from 0 to 1000."
		   });
		addAnnotation
		  (getTap_WalkingDistance(),
		   source,
		   new String[]
		   {
			   "documentation", "Longest way that people walk to it. Usual unit m. Range from 0 m to 100 km."
		   });
		addAnnotation
		  (useCalendarEClass,
		   source,
		   new String[]
		   {
			   "documentation", "When in the year a use takes place."
		   });
		addAnnotation
		  (getUseCalendar_Periods(),
		   source,
		   new String[]
		   {
			   "documentation", "Parts of the year in which it takes place, with a factor; none means the whole year."
		   });
		addAnnotation
		  (getUseCalendar_Weekdays(),
		   source,
		   new String[]
		   {
			   "documentation", "Days of the week on which it takes place; none means every day."
		   });
		addAnnotation
		  (getUseCalendar_Holidays(),
		   source,
		   new String[]
		   {
			   "documentation", "Days on which it does not."
		   });
		addAnnotation
		  (usePeriodEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A part of the year, such as a school term or a growing season."
		   });
		addAnnotation
		  (getUsePeriod_Name(),
		   source,
		   new String[]
		   {
			   "documentation", "Name."
		   });
		addAnnotation
		  (getUsePeriod_From(),
		   source,
		   new String[]
		   {
			   "documentation", "First day."
		   });
		addAnnotation
		  (getUsePeriod_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Last day; before the first day it runs over the new year."
		   });
		addAnnotation
		  (getUsePeriod_Factor(),
		   source,
		   new String[]
		   {
			   "documentation", "Factor on the amount used. Range from 0 to 100. Default 1 (the full amount)."
		   });
		addAnnotation
		  (holidayEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Days without use."
		   });
		addAnnotation
		  (getHoliday_Name(),
		   source,
		   new String[]
		   {
			   "documentation", "Name."
		   });
		addAnnotation
		  (getHoliday_From(),
		   source,
		   new String[]
		   {
			   "documentation", "First day."
		   });
		addAnnotation
		  (getHoliday_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Last day; not given means the first day alone."
		   });
		addAnnotation
		  (getHoliday_Factor(),
		   source,
		   new String[]
		   {
			   "documentation", "Factor on the amount used. Range from 0 to 1. Default 0 (no use)."
		   });
		addAnnotation
		  (useEClass,
		   source,
		   new String[]
		   {
			   "documentation", "What water is used for, by whom and how much."
		   });
		addAnnotation
		  (getUse_Purpose(),
		   source,
		   new String[]
		   {
			   "documentation", "What for; sets how clean the water must be."
		   });
		addAnnotation
		  (getUse_Consumers(),
		   source,
		   new String[]
		   {
			   "documentation", "Who or what uses it, such as pupils, goats, beds."
		   });
		addAnnotation
		  (getUse_Count(),
		   source,
		   new String[]
		   {
			   "documentation", "How many of them. Range from 0 to 1000000. Default 1 (one consumer)."
		   });
		addAnnotation
		  (getUse_AmountEach(),
		   source,
		   new String[]
		   {
			   "documentation", "Water for each of them on a day with use. Usual unit L/d. Range from 0 L/d to 1000 m3/d."
		   });
		addAnnotation
		  (getUse_Priority(),
		   source,
		   new String[]
		   {
			   "documentation", "1 is served first and cut last. Range from 1 to 9. Default 3."
		   });
		addAnnotation
		  (getUse_Vulnerable(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether infants, pregnant, old or ill people are among them; then stricter conditions hold."
		   });
		addAnnotation
		  (getUse_Calendar(),
		   source,
		   new String[]
		   {
			   "documentation", "When it takes place; not given means every day alike."
		   });
		addAnnotation
		  (getUse_Taps(),
		   source,
		   new String[]
		   {
			   "documentation", "Taps it is drawn at."
		   });
		addAnnotation
		  (getUse_Tank(),
		   source,
		   new String[]
		   {
			   "documentation", "Tank it draws from; not given means the tank that feeds its taps, or else all tanks."
		   });
		addAnnotation
		  (getUse_Train(),
		   source,
		   new String[]
		   {
			   "documentation", "Treatment that its water passes; not given means that on the way to its taps, or none."
		   });
		addAnnotation
		  (getUse_Peaks(),
		   source,
		   new String[]
		   {
			   "documentation", "Parts of the day with most of the use; none means spread over daytime."
		   });
		addAnnotation
		  (getUse_Containers(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the water is carried home in vessels that hands touch."
		   });
		addAnnotation
		  (usePeakEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A part of the day with a share of a day\'s use."
		   });
		addAnnotation
		  (getUsePeak_From(),
		   source,
		   new String[]
		   {
			   "documentation", "Start."
		   });
		addAnnotation
		  (getUsePeak_To(),
		   source,
		   new String[]
		   {
			   "documentation", "End."
		   });
		addAnnotation
		  (getUsePeak_Share(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the day\'s use. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (rationingRuleEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A rule by which use is cut when water is short."
		   });
		addAnnotation
		  (getRationingRule_Tank(),
		   source,
		   new String[]
		   {
			   "documentation", "Tank whose level decides; not given means all tanks together."
		   });
		addAnnotation
		  (getRationingRule_Below(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the usable volume below which the rule acts. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getRationingRule_Uses(),
		   source,
		   new String[]
		   {
			   "documentation", "Uses that are cut; none means all."
		   });
		addAnnotation
		  (getRationingRule_Allowed(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the full amount that may still be used. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getRationingRule_From(),
		   source,
		   new String[]
		   {
			   "documentation", "First day of the part of the year in which it acts; not given means all year."
		   });
		addAnnotation
		  (getRationingRule_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Last day of that part."
		   });
		addAnnotation
		  (topUpEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Water that can be brought from outside."
		   });
		addAnnotation
		  (getTopUp_Source(),
		   source,
		   new String[]
		   {
			   "documentation", "Where it comes from."
		   });
		addAnnotation
		  (getTopUp_Tank(),
		   source,
		   new String[]
		   {
			   "documentation", "Tank it is filled into."
		   });
		addAnnotation
		  (getTopUp_Load(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume of one load. Usual unit m3. Range above 0 m3 to 1000 m3."
		   });
		addAnnotation
		  (getTopUp_OrderBelow(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the usable volume below which a load is ordered. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getTopUp_Delay(),
		   source,
		   new String[]
		   {
			   "documentation", "Days from order to arrival. Usual unit d. Range from 0 d to 365 d."
		   });
		addAnnotation
		  (getTopUp_Price(),
		   source,
		   new String[]
		   {
			   "documentation", "Price of one load. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getTopUp_MostPerYear(),
		   source,
		   new String[]
		   {
			   "documentation", "Most loads that can be had in a year; not given means no limit. Range from 0 to 1000."
		   });
		addAnnotation
		  (rawWaterEClass,
		   source,
		   new String[]
		   {
			   "documentation", "What the stored water is like before any treatment; where not tested it is assumed."
		   });
		addAnnotation
		  (getRawWater_Tested(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the values come from tests of this water. Untested water is a condition in every verdict."
		   });
		addAnnotation
		  (getRawWater_Turbidity(),
		   source,
		   new String[]
		   {
			   "documentation", "Turbidity. Usual unit NTU. Range from 0 NTU to 10000 NTU."
		   });
		addAnnotation
		  (getRawWater_Ph(),
		   source,
		   new String[]
		   {
			   "documentation", "pH. Range from 0 to 14."
		   });
		addAnnotation
		  (getRawWater_Alkalinity(),
		   source,
		   new String[]
		   {
			   "documentation", "Alkalinity as calcium carbonate. Usual unit mg/L. Range from 0 mg/L to 2000 mg/L."
		   });
		addAnnotation
		  (getRawWater_ChlorineDemand(),
		   source,
		   new String[]
		   {
			   "documentation", "Chlorine used up by what is in the water. Usual unit mg/L. Range from 0 mg/L to 100 mg/L."
		   });
		addAnnotation
		  (getRawWater_Source(),
		   source,
		   new String[]
		   {
			   "documentation", "Where these values come from."
		   });
		addAnnotation
		  (getRawWater_Pathogens(),
		   source,
		   new String[]
		   {
			   "documentation", "Germs in the water."
		   });
		addAnnotation
		  (pathogenLevelEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Number of germs of a kind in the water."
		   });
		addAnnotation
		  (getPathogenLevel_Group(),
		   source,
		   new String[]
		   {
			   "documentation", "Group."
		   });
		addAnnotation
		  (getPathogenLevel_Pathogen(),
		   source,
		   new String[]
		   {
			   "documentation", "Which germ."
		   });
		addAnnotation
		  (getPathogenLevel_PerLitre(),
		   source,
		   new String[]
		   {
			   "documentation", "Number in a litre. Range from 0 to 1000000000."
		   });
		addAnnotation
		  (getPathogenLevel_Low(),
		   source,
		   new String[]
		   {
			   "documentation", "Low end of the range, in a litre. Range from 0 to 1000000000."
		   });
		addAnnotation
		  (getPathogenLevel_High(),
		   source,
		   new String[]
		   {
			   "documentation", "High end of the range, in a litre. Range from 0 to 1000000000."
		   });
		addAnnotation
		  (getPathogenLevel_Source(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the number comes from; an assumption says so."
		   });
		addAnnotation
		  (treatmentTrainEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Steps of treatment that water passes in order."
		   });
		addAnnotation
		  (getTreatmentTrain_Level(),
		   source,
		   new String[]
		   {
			   "documentation", "Height above the site datum. Usual unit m. Range from -500 m to 9000 m."
		   });
		addAnnotation
		  (getTreatmentTrain_DesignFlow(),
		   source,
		   new String[]
		   {
			   "documentation", "Flow it is meant for. Usual unit L/min. Range above 0 L/min to 10000 L/min."
		   });
		addAnnotation
		  (getTreatmentTrain_Batch(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether water is treated in batches away from the pipes, as in a kitchen."
		   });
		addAnnotation
		  (getTreatmentTrain_Steps(),
		   source,
		   new String[]
		   {
			   "documentation", "Steps, from the tank to the use."
		   });
		addAnnotation
		  (treatmentStepEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A step of a treatment train."
		   });
		addAnnotation
		  (getTreatmentStep_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What it does."
		   });
		addAnnotation
		  (getTreatmentStep_Active(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether it is in place. Default true."
		   });
		addAnnotation
		  (getTreatmentStep_Rating(),
		   source,
		   new String[]
		   {
			   "documentation", "Particle size it holds back. Usual unit um. Range above 0 um to 10 mm."
		   });
		addAnnotation
		  (getTreatmentStep_RatingBasis(),
		   source,
		   new String[]
		   {
			   "documentation", "What the rating means."
		   });
		addAnnotation
		  (getTreatmentStep_Reductions(),
		   source,
		   new String[]
		   {
			   "documentation", "What it removes; without them the defaults of the kind."
		   });
		addAnnotation
		  (getTreatmentStep_Availability(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the time it works. Usual unit %. Range from 0 to 1. Default 100 % (taken as always working unless given)."
		   });
		addAnnotation
		  (getTreatmentStep_MaxFlow(),
		   source,
		   new String[]
		   {
			   "documentation", "Highest flow at which it works. Usual unit L/min. Range above 0 L/min to 10000 L/min."
		   });
		addAnnotation
		  (getTreatmentStep_HeadLossClean(),
		   source,
		   new String[]
		   {
			   "documentation", "Loss of head when clean, at the reference flow. Usual unit m(head). Range from 0 m to 100 m."
		   });
		addAnnotation
		  (getTreatmentStep_HeadLossFouled(),
		   source,
		   new String[]
		   {
			   "documentation", "Loss of head when due for a change, at the reference flow. Usual unit m(head). Range from 0 m to 100 m."
		   });
		addAnnotation
		  (getTreatmentStep_ReferenceFlow(),
		   source,
		   new String[]
		   {
			   "documentation", "Flow at which the losses hold. Usual unit L/min. Range above 0 L/min to 10000 L/min."
		   });
		addAnnotation
		  (getTreatmentStep_ChangeInterval(),
		   source,
		   new String[]
		   {
			   "documentation", "Time after which it is changed or cleaned. Usual unit d. Range above 0 d to 3660 d."
		   });
		addAnnotation
		  (getTreatmentStep_ChangeVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume after which it is changed or cleaned. Usual unit m3. Range above 0 m3 to 1000000 m3."
		   });
		addAnnotation
		  (getTreatmentStep_ChangeCost(),
		   source,
		   new String[]
		   {
			   "documentation", "Cost of one change. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getTreatmentStep_LastChanged(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it was last changed or cleaned."
		   });
		addAnnotation
		  (getTreatmentStep_MaxTurbidity(),
		   source,
		   new String[]
		   {
			   "documentation", "Highest turbidity at which it works; not given means that of the kind. Usual unit NTU. Range from 0 NTU to 1000 NTU."
		   });
		addAnnotation
		  (getTreatmentStep_EnergySource(),
		   source,
		   new String[]
		   {
			   "documentation", "What drives it, if it needs power."
		   });
		addAnnotation
		  (getTreatmentStep_Power(),
		   source,
		   new String[]
		   {
			   "documentation", "Power it takes. Usual unit W. Range from 0 W to 10 kW."
		   });
		addAnnotation
		  (getTreatmentStep_UvDose(),
		   source,
		   new String[]
		   {
			   "documentation", "Dose of a UV lamp at its highest flow. Usual unit mJ/cm2. Range from 0 mJ/cm2 to 1000 mJ/cm2."
		   });
		addAnnotation
		  (getTreatmentStep_Validated(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the dose of the UV lamp or the claim of the filter is certified for this very model."
		   });
		addAnnotation
		  (getTreatmentStep_Product(),
		   source,
		   new String[]
		   {
			   "documentation", "In which form chlorine is bought."
		   });
		addAnnotation
		  (getTreatmentStep_Strength(),
		   source,
		   new String[]
		   {
			   "documentation", "Available chlorine in the product. Usual unit %. Range above 0 to 1."
		   });
		addAnnotation
		  (getTreatmentStep_StrengthBasis(),
		   source,
		   new String[]
		   {
			   "documentation", "What the strength refers to."
		   });
		addAnnotation
		  (getTreatmentStep_ProductDensity(),
		   source,
		   new String[]
		   {
			   "documentation", "Density of a liquid product. Usual unit kg/L. Range above 0 kg/L to 5 kg/L."
		   });
		addAnnotation
		  (getTreatmentStep_ProductAge(),
		   source,
		   new String[]
		   {
			   "documentation", "Age of the product when used; bleach weakens. Usual unit d. Range from 0 d to 3660 d."
		   });
		addAnnotation
		  (getTreatmentStep_Dose(),
		   source,
		   new String[]
		   {
			   "documentation", "Chlorine added to the water. Usual unit mg/L. Range from 0 mg/L to 200 mg/L."
		   });
		addAnnotation
		  (getTreatmentStep_Residual(),
		   source,
		   new String[]
		   {
			   "documentation", "Free chlorine measured after the contact time; without it no credit is given. Usual unit mg/L. Range from 0 mg/L to 50 mg/L."
		   });
		addAnnotation
		  (getTreatmentStep_ResidualDate(),
		   source,
		   new String[]
		   {
			   "documentation", "Day the residual was measured."
		   });
		addAnnotation
		  (getTreatmentStep_ContactVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume in which chlorine acts before the first tap. Usual unit m3. Range from 0 m3 to 10000 m3."
		   });
		addAnnotation
		  (getTreatmentStep_ContactTime(),
		   source,
		   new String[]
		   {
			   "documentation", "Time that chlorine, sun or heat acts on a batch. Usual unit min. Range from 0 min to 10080 min."
		   });
		addAnnotation
		  (getTreatmentStep_Baffling(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the mean residence time that the quickest water stays. Range above 0 to 1. Default 0.1 (from memory, verify against US EPA Surface Water Treatment Rule guidance manual 1991, unbaffled tank)."
		   });
		addAnnotation
		  (getTreatmentStep_BatchVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume of a batch or bottle. Usual unit L. Range above 0 L to 10 m3."
		   });
		addAnnotation
		  (logReductionEClass,
		   source,
		   new String[]
		   {
			   "documentation", "How far a step lowers a group of germs."
		   });
		addAnnotation
		  (getLogReduction_Group(),
		   source,
		   new String[]
		   {
			   "documentation", "Group."
		   });
		addAnnotation
		  (getLogReduction_Low(),
		   source,
		   new String[]
		   {
			   "documentation", "Powers of ten removed in usual, not so careful use. Range from 0 to 12."
		   });
		addAnnotation
		  (getLogReduction_High(),
		   source,
		   new String[]
		   {
			   "documentation", "Powers of ten removed at best. Range from 0 to 12."
		   });
		addAnnotation
		  (getLogReduction_Source(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the numbers come from."
		   });
		addAnnotation
		  (costItemEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A cost."
		   });
		addAnnotation
		  (getCostItem_Category(),
		   source,
		   new String[]
		   {
			   "documentation", "Category over the life of the service."
		   });
		addAnnotation
		  (getCostItem_Amount(),
		   source,
		   new String[]
		   {
			   "documentation", "Amount for one unit. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getCostItem_Quantity(),
		   source,
		   new String[]
		   {
			   "documentation", "Number of units. Range from 0 to 1000000000. Default 1 (one unit)."
		   });
		addAnnotation
		  (getCostItem_Unit(),
		   source,
		   new String[]
		   {
			   "documentation", "What one unit is."
		   });
		addAnnotation
		  (getCostItem_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Part of the system it belongs to."
		   });
		addAnnotation
		  (getCostItem_FirstYear(),
		   source,
		   new String[]
		   {
			   "documentation", "Year in which it first falls due, 0 being the year of building. Range from 0 to 200."
		   });
		addAnnotation
		  (getCostItem_Interval(),
		   source,
		   new String[]
		   {
			   "documentation", "Time after which it falls due again; not given means once. Usual unit yr. Range above 0 yr to 200 yr."
		   });
		addAnnotation
		  (getCostItem_Life(),
		   source,
		   new String[]
		   {
			   "documentation", "Life; a residual value is left of what is not used up. Usual unit yr. Range above 0 yr to 200 yr."
		   });
		addAnnotation
		  (getCostItem_YearlyChange(),
		   source,
		   new String[]
		   {
			   "documentation", "Change of the price each year above general inflation. Usual unit %. Range from -0.5 to 1."
		   });
		addAnnotation
		  (getCostItem_Person(),
		   source,
		   new String[]
		   {
			   "documentation", "Who pays or does the work."
		   });
		addAnnotation
		  (alternativeSupplyEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Another way to get the same water, for comparison."
		   });
		addAnnotation
		  (getAlternativeSupply_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What it is."
		   });
		addAnnotation
		  (getAlternativeSupply_Price(),
		   source,
		   new String[]
		   {
			   "documentation", "Price of the water. Usual unit cur/m3. Range from 0 upwards."
		   });
		addAnnotation
		  (getAlternativeSupply_Capital(),
		   source,
		   new String[]
		   {
			   "documentation", "Cost to begin with. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getAlternativeSupply_CapitalLife(),
		   source,
		   new String[]
		   {
			   "documentation", "Life of what was bought to begin with. Usual unit yr. Range above 0 yr to 200 yr."
		   });
		addAnnotation
		  (getAlternativeSupply_YearlyCost(),
		   source,
		   new String[]
		   {
			   "documentation", "Fixed cost each year. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getAlternativeSupply_Energy(),
		   source,
		   new String[]
		   {
			   "documentation", "Energy for each volume. Usual unit kWh/m3. Range from 0 upwards."
		   });
		addAnnotation
		  (getAlternativeSupply_Reliability(),
		   source,
		   new String[]
		   {
			   "documentation", "Share of the days on which it can be had. Usual unit %. Range from 0 to 1."
		   });
		addAnnotation
		  (getAlternativeSupply_Source(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the prices come from."
		   });
		addAnnotation
		  (economyEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Money matters that hold for the whole site."
		   });
		addAnnotation
		  (getEconomy_Basis(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether prices hold inflation."
		   });
		addAnnotation
		  (getEconomy_DiscountRate(),
		   source,
		   new String[]
		   {
			   "documentation", "Rate at which later money counts for less. Usual unit %. Range from 0 to 0.5. Default 4 % (a choice of this program; use the rate of the one who pays)."
		   });
		addAnnotation
		  (getEconomy_Inflation(),
		   source,
		   new String[]
		   {
			   "documentation", "General inflation, where prices are nominal. Usual unit %. Range from -0.1 to 0.5."
		   });
		addAnnotation
		  (getEconomy_Horizon(),
		   source,
		   new String[]
		   {
			   "documentation", "Years that are looked at. Usual unit yr. Range from 1 yr to 200 yr. Default 20 yr (common practice, no source)."
		   });
		addAnnotation
		  (getEconomy_BaseYear(),
		   source,
		   new String[]
		   {
			   "documentation", "Year of the prices. Range from 1900 to 2300."
		   });
		addAnnotation
		  (getEconomy_EnergyPrice(),
		   source,
		   new String[]
		   {
			   "documentation", "Price of energy. Usual unit cur/kWh. Range from 0 upwards."
		   });
		addAnnotation
		  (getEconomy_LabourPrice(),
		   source,
		   new String[]
		   {
			   "documentation", "Cost of an hour\'s work. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getEconomy_Tariff(),
		   source,
		   new String[]
		   {
			   "documentation", "What users pay for the water. Usual unit cur/m3. Range from 0 upwards."
		   });
		addAnnotation
		  (getEconomy_People(),
		   source,
		   new String[]
		   {
			   "documentation", "People who live on the water, for costs by person; not given means counted from the uses. Range from 0 to 1000000."
		   });
		addAnnotation
		  (optionEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A set of changes to weigh against the design as it stands."
		   });
		addAnnotation
		  (getOption_Active(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether it is shown and computed. Default true."
		   });
		addAnnotation
		  (getOption_Reason(),
		   source,
		   new String[]
		   {
			   "documentation", "Why it is thought about."
		   });
		addAnnotation
		  (getOption_Changes(),
		   source,
		   new String[]
		   {
			   "documentation", "Changes it makes."
		   });
		addAnnotation
		  (stageEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A dated step in which the system is built up; its changes come on top of those of the stages before it."
		   });
		addAnnotation
		  (getStage_Date(),
		   source,
		   new String[]
		   {
			   "documentation", "Day from which it holds."
		   });
		addAnnotation
		  (getStage_Budget(),
		   source,
		   new String[]
		   {
			   "documentation", "Money there is for it. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (changeEClass,
		   source,
		   new String[]
		   {
			   "documentation", "One value that an option sets."
		   });
		addAnnotation
		  (getChange_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Element that is changed."
		   });
		addAnnotation
		  (getChange_Feature(),
		   source,
		   new String[]
		   {
			   "documentation", "Name of its feature as in the schema, such as planArea or inUse."
		   });
		addAnnotation
		  (getChange_Value(),
		   source,
		   new String[]
		   {
			   "documentation", "New value as text, as in the site file; not given means the value is taken away."
		   });
		addAnnotation
		  (upkeepTaskEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Recurring work."
		   });
		addAnnotation
		  (getUpkeepTask_Elements(),
		   source,
		   new String[]
		   {
			   "documentation", "Parts it is done on."
		   });
		addAnnotation
		  (getUpkeepTask_Interval(),
		   source,
		   new String[]
		   {
			   "documentation", "Time after which it is due again. Usual unit d. Range above 0 d to 36525 d."
		   });
		addAnnotation
		  (getUpkeepTask_DueOn(),
		   source,
		   new String[]
		   {
			   "documentation", "Days of the year on which it is due, such as before the rains."
		   });
		addAnnotation
		  (getUpkeepTask_AfterVolume(),
		   source,
		   new String[]
		   {
			   "documentation", "Volume of water after which it is due. Usual unit m3. Range above 0 m3 to 1000000 m3."
		   });
		addAnnotation
		  (getUpkeepTask_BeforeFirstRain(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether it is due before the first rain after the dry season."
		   });
		addAnnotation
		  (getUpkeepTask_LastDone(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it was last done."
		   });
		addAnnotation
		  (getUpkeepTask_Effort(),
		   source,
		   new String[]
		   {
			   "documentation", "Work it takes. Usual unit h. Range from 0 h to 1000 h."
		   });
		addAnnotation
		  (getUpkeepTask_Cost(),
		   source,
		   new String[]
		   {
			   "documentation", "What it costs each time. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getUpkeepTask_Who(),
		   source,
		   new String[]
		   {
			   "documentation", "Who does it."
		   });
		addAnnotation
		  (getUpkeepTask_Checklist(),
		   source,
		   new String[]
		   {
			   "documentation", "Steps, one on each line."
		   });
		addAnnotation
		  (getUpkeepTask_Spares(),
		   source,
		   new String[]
		   {
			   "documentation", "Parts and tools needed, one on each line."
		   });
		addAnnotation
		  (getUpkeepTask_Source(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the interval comes from."
		   });
		addAnnotation
		  (getUpkeepTask_Hazard(),
		   source,
		   new String[]
		   {
			   "documentation", "What can hurt the one who does it, and what to mind."
		   });
		addAnnotation
		  (safetyMeasureEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A hazard and what keeps it in check."
		   });
		addAnnotation
		  (getSafetyMeasure_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Where."
		   });
		addAnnotation
		  (getSafetyMeasure_Hazard(),
		   source,
		   new String[]
		   {
			   "documentation", "What can go wrong."
		   });
		addAnnotation
		  (getSafetyMeasure_Control(),
		   source,
		   new String[]
		   {
			   "documentation", "What keeps it in check."
		   });
		addAnnotation
		  (getSafetyMeasure_Limit(),
		   source,
		   new String[]
		   {
			   "documentation", "When it is no longer in check."
		   });
		addAnnotation
		  (getSafetyMeasure_Check(),
		   source,
		   new String[]
		   {
			   "documentation", "How and how often it is looked at."
		   });
		addAnnotation
		  (getSafetyMeasure_Action(),
		   source,
		   new String[]
		   {
			   "documentation", "What is done then."
		   });
		addAnnotation
		  (getSafetyMeasure_Who(),
		   source,
		   new String[]
		   {
			   "documentation", "Who does it."
		   });
		addAnnotation
		  (inspectionEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A sanitary inspection."
		   });
		addAnnotation
		  (getInspection_Date(),
		   source,
		   new String[]
		   {
			   "documentation", "Day."
		   });
		addAnnotation
		  (getInspection_Inspector(),
		   source,
		   new String[]
		   {
			   "documentation", "Who made it."
		   });
		addAnnotation
		  (getInspection_Answers(),
		   source,
		   new String[]
		   {
			   "documentation", "Answers."
		   });
		addAnnotation
		  (inspectionAnswerEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Answer to a question of an inspection."
		   });
		addAnnotation
		  (getInspectionAnswer_Question(),
		   source,
		   new String[]
		   {
			   "documentation", "Code of the question."
		   });
		addAnnotation
		  (getInspectionAnswer_Answer(),
		   source,
		   new String[]
		   {
			   "documentation", "Answer."
		   });
		addAnnotation
		  (getInspectionAnswer_Remark(),
		   source,
		   new String[]
		   {
			   "documentation", "What was seen."
		   });
		addAnnotation
		  (readingEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A value that was read on the site."
		   });
		addAnnotation
		  (getReading_Date(),
		   source,
		   new String[]
		   {
			   "documentation", "Day."
		   });
		addAnnotation
		  (getReading_Time(),
		   source,
		   new String[]
		   {
			   "documentation", "Time; not given means not known."
		   });
		addAnnotation
		  (getReading_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What was read."
		   });
		addAnnotation
		  (getReading_Value(),
		   source,
		   new String[]
		   {
			   "documentation", "Value with its unit; a pure number for pH."
		   });
		addAnnotation
		  (getReading_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Where."
		   });
		addAnnotation
		  (getReading_Reader(),
		   source,
		   new String[]
		   {
			   "documentation", "Who read it."
		   });
		addAnnotation
		  (waterTestEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A result of a test of the water."
		   });
		addAnnotation
		  (getWaterTest_Date(),
		   source,
		   new String[]
		   {
			   "documentation", "Day of the sample."
		   });
		addAnnotation
		  (getWaterTest_Parameter(),
		   source,
		   new String[]
		   {
			   "documentation", "What was looked for."
		   });
		addAnnotation
		  (getWaterTest_Value(),
		   source,
		   new String[]
		   {
			   "documentation", "Result as a number; not given means none found. Range from 0 upwards."
		   });
		addAnnotation
		  (getWaterTest_BelowDetection(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether the number is a limit of detection and the true value lies below it."
		   });
		addAnnotation
		  (getWaterTest_Unit(),
		   source,
		   new String[]
		   {
			   "documentation", "Unit as the laboratory writes it."
		   });
		addAnnotation
		  (getWaterTest_Limit(),
		   source,
		   new String[]
		   {
			   "documentation", "Limit in the same unit that the result is held against. Range from 0 upwards."
		   });
		addAnnotation
		  (getWaterTest_LimitSource(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the limit comes from."
		   });
		addAnnotation
		  (getWaterTest_Laboratory(),
		   source,
		   new String[]
		   {
			   "documentation", "Who tested."
		   });
		addAnnotation
		  (getWaterTest_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Where the sample was taken."
		   });
		addAnnotation
		  (getWaterTest_Action(),
		   source,
		   new String[]
		   {
			   "documentation", "What was done about it."
		   });
		addAnnotation
		  (incidentEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Something that went wrong."
		   });
		addAnnotation
		  (getIncident_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What it was."
		   });
		addAnnotation
		  (getIncident_From(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it began."
		   });
		addAnnotation
		  (getIncident_To(),
		   source,
		   new String[]
		   {
			   "documentation", "Day it ended; not given means not over or one day."
		   });
		addAnnotation
		  (getIncident_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Where."
		   });
		addAnnotation
		  (getIncident_VolumeLost(),
		   source,
		   new String[]
		   {
			   "documentation", "Water lost. Usual unit m3. Range from 0 m3 to 1000000 m3."
		   });
		addAnnotation
		  (getIncident_Action(),
		   source,
		   new String[]
		   {
			   "documentation", "What was done."
		   });
		addAnnotation
		  (sharedSchemeEClass,
		   source,
		   new String[]
		   {
			   "documentation", "How a system that several households share is run."
		   });
		addAnnotation
		  (getSharedScheme_Families(),
		   source,
		   new String[]
		   {
			   "documentation", "Number of families. Range from 0 to 100000."
		   });
		addAnnotation
		  (getSharedScheme_PeoplePerFamily(),
		   source,
		   new String[]
		   {
			   "documentation", "People in a family. Range from 0 to 100."
		   });
		addAnnotation
		  (getSharedScheme_KeyHolder(),
		   source,
		   new String[]
		   {
			   "documentation", "Who keeps the key."
		   });
		addAnnotation
		  (getSharedScheme_Ration(),
		   source,
		   new String[]
		   {
			   "documentation", "Ration of a family. Usual unit L/d. Range from 0 L/d to 100 m3/d."
		   });
		addAnnotation
		  (getSharedScheme_MonthlyFee(),
		   source,
		   new String[]
		   {
			   "documentation", "Fee of a family each month. Usual unit cur. Range from 0 upwards."
		   });
		addAnnotation
		  (getSharedScheme_NightLoss(),
		   source,
		   new String[]
		   {
			   "documentation", "Flow measured at night when nobody draws. Usual unit L/min. Range from 0 L/min to 1000 L/min."
		   });
		addAnnotation
		  (getSharedScheme_CashBook(),
		   source,
		   new String[]
		   {
			   "documentation", "Money taken and spent."
		   });
		addAnnotation
		  (cashEntryEClass,
		   source,
		   new String[]
		   {
			   "documentation", "Money taken or spent."
		   });
		addAnnotation
		  (getCashEntry_Date(),
		   source,
		   new String[]
		   {
			   "documentation", "Day."
		   });
		addAnnotation
		  (getCashEntry_Amount(),
		   source,
		   new String[]
		   {
			   "documentation", "Amount; negative where spent. Usual unit cur."
		   });
		addAnnotation
		  (getCashEntry_What(),
		   source,
		   new String[]
		   {
			   "documentation", "What for."
		   });
		addAnnotation
		  (getCashEntry_Who(),
		   source,
		   new String[]
		   {
			   "documentation", "Who paid or was paid."
		   });
		addAnnotation
		  (remarkEClass,
		   source,
		   new String[]
		   {
			   "documentation", "What a reviewer says about an element, and sign-offs."
		   });
		addAnnotation
		  (getRemark_Kind(),
		   source,
		   new String[]
		   {
			   "documentation", "What it is."
		   });
		addAnnotation
		  (getRemark_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "What it is about; not given means the whole site."
		   });
		addAnnotation
		  (getRemark_Author(),
		   source,
		   new String[]
		   {
			   "documentation", "Who says it."
		   });
		addAnnotation
		  (getRemark_Role(),
		   source,
		   new String[]
		   {
			   "documentation", "In what capacity, such as design engineer, and licence number where it matters."
		   });
		addAnnotation
		  (getRemark_Date(),
		   source,
		   new String[]
		   {
			   "documentation", "Day."
		   });
		addAnnotation
		  (getRemark_Text(),
		   source,
		   new String[]
		   {
			   "documentation", "What is said."
		   });
		addAnnotation
		  (getRemark_Fingerprint(),
		   source,
		   new String[]
		   {
			   "documentation", "Fingerprint of what the author saw; a sign-off is out of date when it no longer matches."
		   });
		addAnnotation
		  (getRemark_RestsOn(),
		   source,
		   new String[]
		   {
			   "documentation", "Features and findings that the fingerprint covers, by name."
		   });
		addAnnotation
		  (getRemark_Settled(),
		   source,
		   new String[]
		   {
			   "documentation", "Whether nothing is left to be done about it."
		   });
		addAnnotation
		  (getRemark_Replies(),
		   source,
		   new String[]
		   {
			   "documentation", "Answers to it."
		   });
		addAnnotation
		  (extensionEntryEClass,
		   source,
		   new String[]
		   {
			   "documentation", "A value that belongs to a plug-in; kept and written back even when the plug-in is absent."
		   });
		addAnnotation
		  (getExtensionEntry_Plugin(),
		   source,
		   new String[]
		   {
			   "documentation", "Identifier of the plug-in."
		   });
		addAnnotation
		  (getExtensionEntry_Schema(),
		   source,
		   new String[]
		   {
			   "documentation", "Version of the plug-in\'s own schema. Range from 1 upwards. Default 1."
		   });
		addAnnotation
		  (getExtensionEntry_Key(),
		   source,
		   new String[]
		   {
			   "documentation", "Key within the plug-in."
		   });
		addAnnotation
		  (getExtensionEntry_Type(),
		   source,
		   new String[]
		   {
			   "documentation", "Type of the value."
		   });
		addAnnotation
		  (getExtensionEntry_Value(),
		   source,
		   new String[]
		   {
			   "documentation", "Value as text."
		   });
		addAnnotation
		  (getExtensionEntry_Element(),
		   source,
		   new String[]
		   {
			   "documentation", "Element it belongs to; not given means the whole site."
		   });
		addAnnotation
		  (rainFormatEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "How a rain file is written."
		   });
		addAnnotation
		  (rainFormatEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Found from the content of the file."
		   });
		addAnnotation
		  (rainFormatEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "GHCN-Daily fixed-width records (.dly)."
		   });
		addAnnotation
		  (rainFormatEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "GHCN-Daily station table in CSV."
		   });
		addAnnotation
		  (rainFormatEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Any CSV file with a date column and a depth column."
		   });
		addAnnotation
		  (depthUnitEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Unit of the depths in a rain file."
		   });
		addAnnotation
		  (depthUnitEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Found from the header of the column or from the format."
		   });
		addAnnotation
		  (depthUnitEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Millimetres."
		   });
		addAnnotation
		  (depthUnitEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Tenths of a millimetre."
		   });
		addAnnotation
		  (depthUnitEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Inches."
		   });
		addAnnotation
		  (depthUnitEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Hundredths of an inch."
		   });
		addAnnotation
		  (gapMethodEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a calculation does with days that have no depth."
		   });
		addAnnotation
		  (gapMethodEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Refuse to calculate while a day is missing."
		   });
		addAnnotation
		  (gapMethodEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Take a missing day as dry."
		   });
		addAnnotation
		  (gapMethodEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Take the mean of that day of the year."
		   });
		addAnnotation
		  (gapMethodEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Take the depth of the donor record, scaled to the normals of this place."
		   });
		addAnnotation
		  (weekdayEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "A day of the week."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Monday."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Tuesday."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Wednesday."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Thursday."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Friday."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Saturday."
		   });
		addAnnotation
		  (weekdayEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Sunday."
		   });
		addAnnotation
		  (roofMaterialEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a roof is covered with."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Galvanised corrugated or flat steel sheet."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Steel sheet with an aluminium-zinc or painted coating."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Aluminium sheet."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Clay tiles."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Concrete tiles."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Slate."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Flat concrete slab."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Bitumen felt or shingles."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Sheet of asbestos-cement. Do not cut, drill or brush it; ask a licensed remover."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Fibre-cement sheet without asbestos."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Plastic sheet or membrane."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "Thatch."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "Timber shingles."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(14),
		   source,
		   new String[]
		   {
			   "documentation", "Copper sheet."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(15),
		   source,
		   new String[]
		   {
			   "documentation", "Zinc sheet."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(16),
		   source,
		   new String[]
		   {
			   "documentation", "Lead sheet. Water from it is not for drinking."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(17),
		   source,
		   new String[]
		   {
			   "documentation", "Planted roof."
		   });
		addAnnotation
		  (roofMaterialEEnum.getELiterals().get(18),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (runoffBasisEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a runoff coefficient already holds."
		   });
		addAnnotation
		  (runoffBasisEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (runoffBasisEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Losses of one storm after wetting; initial loss is taken off apart from it."
		   });
		addAnnotation
		  (runoffBasisEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "All losses of a year, initial loss and splash among them; nothing else is to be taken off."
		   });
		addAnnotation
		  (hazardEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Something near or on a roof that spoils the water or the catchment."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Trees or branches above the roof."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Birds perch or nest on the roof."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Rats, possums, monkeys or other animals reach the roof or gutters."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Crop spraying near by."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Smoke or soot of a stove or flue settles on the roof."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Heavy road traffic near by."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Smelter, mine, kiln or factory near by."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Much dust from roads or fields."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Salt spray."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Lead flashing or lead-headed nails."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Paint that holds or may hold lead."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Timber treated with arsenic, copper or tar in touch with the water."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "Bitumen paint or felt patches."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "A stove pipe or gas flue ends on the roof."
		   });
		addAnnotation
		  (hazardEEnum.getELiterals().get(14),
		   source,
		   new String[]
		   {
			   "documentation", "People walk, sleep or dry goods on the roof."
		   });
		addAnnotation
		  (gutterProfileEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Shape of the cross-section of a gutter."
		   });
		addAnnotation
		  (gutterProfileEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (gutterProfileEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Half a circle; the width is the diameter."
		   });
		addAnnotation
		  (gutterProfileEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A rectangle of width and depth."
		   });
		addAnnotation
		  (gutterProfileEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A trapezium of top width, sole width and depth."
		   });
		addAnnotation
		  (gutterProfileEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "A triangle (valley) of width and depth."
		   });
		addAnnotation
		  (outletShapeEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "How water leaves a gutter."
		   });
		addAnnotation
		  (outletShapeEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (outletShapeEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A hole with a sharp edge."
		   });
		addAnnotation
		  (outletShapeEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A hole with a rounded edge."
		   });
		addAnnotation
		  (outletShapeEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A box or funnel below the gutter."
		   });
		addAnnotation
		  (outletShapeEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "The open end of the gutter."
		   });
		addAnnotation
		  (tankKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What sort of tank it is."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A large tank in or on the ground, built in place."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A tank on a stand, filled by a pump, that feeds taps by gravity."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A barrel or drum."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "A plastic container in a cage, about one cubic metre."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "A moulded plastic tank."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "A flexible bag."
		   });
		addAnnotation
		  (tankKindEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (tankMaterialEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What the wall of a tank is made of."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Reinforced concrete."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Ferrocement."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Brick, block or stone with a lining."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Polyethylene."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Galvanised steel."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Steel with a liner."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Stainless steel."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Glass-reinforced plastic."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Timber with a liner."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Flexible sheet."
		   });
		addAnnotation
		  (tankMaterialEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (tankCoverEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "How the top of a tank is closed."
		   });
		addAnnotation
		  (tankCoverEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (tankCoverEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A tight roof with a locked hatch, every opening screened."
		   });
		addAnnotation
		  (tankCoverEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A roof with screened openings."
		   });
		addAnnotation
		  (tankCoverEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A loose lid."
		   });
		addAnnotation
		  (tankCoverEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "No cover."
		   });
		addAnnotation
		  (placeInGroundEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "How a tank stands."
		   });
		addAnnotation
		  (placeInGroundEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (placeInGroundEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "On a base at ground level."
		   });
		addAnnotation
		  (placeInGroundEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Wholly below ground."
		   });
		addAnnotation
		  (placeInGroundEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Partly below ground."
		   });
		addAnnotation
		  (placeInGroundEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "On a stand above ground."
		   });
		addAnnotation
		  (tankLinkKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "How two tanks share water."
		   });
		addAnnotation
		  (tankLinkKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (tankLinkKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Joined low down by an open pipe, so that both stand at one level."
		   });
		addAnnotation
		  (tankLinkKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "The first spills or is let into the second."
		   });
		addAnnotation
		  (tankLinkKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Water is moved from the first to the second by hand or by a transfer pump."
		   });
		addAnnotation
		  (runUseEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a run of pipe is for."
		   });
		addAnnotation
		  (runUseEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (runUseEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "From a pump up to a tank."
		   });
		addAnnotation
		  (runUseEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "From a tank to a pump."
		   });
		addAnnotation
		  (runUseEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "From a tank down to taps."
		   });
		addAnnotation
		  (runUseEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "From a pump or pressure vessel to taps."
		   });
		addAnnotation
		  (runUseEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Overflow or drain away from the site\'s use."
		   });
		addAnnotation
		  (pipeMaterialEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a pipe is made of."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Unplasticised PVC."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Polyethylene (HDPE)."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Polypropylene (PPR)."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Galvanised steel."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Plain steel."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Stainless steel."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Copper."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Cast or ductile iron."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Flexible hose."
		   });
		addAnnotation
		  (pipeMaterialEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (fittingKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "A fitting or change of section in a run of pipe."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Entrance flush with the wall, sharp edge."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Entrance of a pipe that projects inward."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Entrance with a rounded edge."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Exit into a tank or the air."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Elbow of 90 degrees."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Elbow of 45 degrees."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Bend of large radius, 90 degrees."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Bend of 180 degrees."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Tee, straight through."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Tee, into or out of the branch."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Gate valve, open."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "Ball valve, full bore, open."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "Globe valve, open."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(14),
		   source,
		   new String[]
		   {
			   "documentation", "Angle valve, open."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(15),
		   source,
		   new String[]
		   {
			   "documentation", "Butterfly valve, open."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(16),
		   source,
		   new String[]
		   {
			   "documentation", "Swing check valve."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(17),
		   source,
		   new String[]
		   {
			   "documentation", "Lift or spring check valve."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(18),
		   source,
		   new String[]
		   {
			   "documentation", "Foot valve with strainer."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(19),
		   source,
		   new String[]
		   {
			   "documentation", "Strainer, clean."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(20),
		   source,
		   new String[]
		   {
			   "documentation", "Water meter."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(21),
		   source,
		   new String[]
		   {
			   "documentation", "Float valve, open."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(22),
		   source,
		   new String[]
		   {
			   "documentation", "Sudden or conical change to a smaller bore."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(23),
		   source,
		   new String[]
		   {
			   "documentation", "Sudden or conical change to a larger bore."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(24),
		   source,
		   new String[]
		   {
			   "documentation", "Straight coupling or union."
		   });
		addAnnotation
		  (fittingKindEEnum.getELiterals().get(25),
		   source,
		   new String[]
		   {
			   "documentation", "Something else; its loss coefficient must be given."
		   });
		addAnnotation
		  (pumpKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What drives and where stands a pump."
		   });
		addAnnotation
		  (pumpKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (pumpKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A pump beside the water, with a suction pipe."
		   });
		addAnnotation
		  (pumpKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A pump under water."
		   });
		addAnnotation
		  (pumpKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A pump worked by hand or foot."
		   });
		addAnnotation
		  (pumpArrangementEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "How several equal pumps work together."
		   });
		addAnnotation
		  (pumpArrangementEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "One works; others, if any, stand by."
		   });
		addAnnotation
		  (pumpArrangementEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "All work one after the other: heads add."
		   });
		addAnnotation
		  (pumpArrangementEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "All work side by side: flows add."
		   });
		addAnnotation
		  (energySourceEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What drives a pump or a lamp."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Mains electricity."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Solar panels without battery."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Solar panels with battery."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Engine generator."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Engine on the shaft."
		   });
		addAnnotation
		  (energySourceEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "People."
		   });
		addAnnotation
		  (tapKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What kind of outlet water is drawn at."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A tap at a sink or wall."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A public tap stand."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A self-closing push tap."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "A shower."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "A cistern of a toilet."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "A hose connection."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "A drinking fountain."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "A tap at the foot of a barrel."
		   });
		addAnnotation
		  (tapKindEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "A float valve that fills another container."
		   });
		addAnnotation
		  (purposeEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What water is used for; it sets how clean it must be."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Watering plants that are not eaten raw, or the soil of those that are."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Drinking water of animals."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Flushing toilets."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Washing clothes."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Washing hands and body."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Cooking and washing of food and dishes."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Drinking, brushing teeth, mixing infant food."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Cleaning floors and rooms."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Building work."
		   });
		addAnnotation
		  (purposeEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (disinfectantProductEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "In which form chlorine is bought."
		   });
		addAnnotation
		  (disinfectantProductEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (disinfectantProductEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Sodium hypochlorite solution (bleach)."
		   });
		addAnnotation
		  (disinfectantProductEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Calcium hypochlorite granules."
		   });
		addAnnotation
		  (disinfectantProductEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Tablets of stated strength."
		   });
		addAnnotation
		  (strengthBasisEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What the strength of a chlorine product refers to."
		   });
		addAnnotation
		  (strengthBasisEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Weight for volume for a liquid, weight for weight for a solid."
		   });
		addAnnotation
		  (strengthBasisEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Grams of available chlorine in 100 mL of product."
		   });
		addAnnotation
		  (strengthBasisEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Grams of available chlorine in 100 g of product."
		   });
		addAnnotation
		  (stepKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a step of a treatment train does."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A mesh screen or leaf guard."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Still water in which dirt sinks."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A string-wound, spun or pleated cartridge that holds dirt."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "A ceramic candle or block."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "A ceramic candle or block with silver."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "A bed or cartridge of granular activated carbon."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "A block of activated carbon."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "A slow sand filter."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "A rapid sand or multimedia filter."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "A microfiltration membrane."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "An ultrafiltration membrane."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "A reverse osmosis membrane."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "An ultraviolet lamp."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(14),
		   source,
		   new String[]
		   {
			   "documentation", "Boiling."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(15),
		   source,
		   new String[]
		   {
			   "documentation", "Bottles in the sun."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(16),
		   source,
		   new String[]
		   {
			   "documentation", "Chlorine."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(17),
		   source,
		   new String[]
		   {
			   "documentation", "Limestone or calcite that hardens soft water."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(18),
		   source,
		   new String[]
		   {
			   "documentation", "A closed vessel with a tap."
		   });
		addAnnotation
		  (stepKindEEnum.getELiterals().get(19),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (ratingBasisEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What the rating of a filter means."
		   });
		addAnnotation
		  (ratingBasisEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated; taken as nominal."
		   });
		addAnnotation
		  (ratingBasisEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Most, not all, particles of that size are held."
		   });
		addAnnotation
		  (ratingBasisEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Practically all particles of that size are held."
		   });
		addAnnotation
		  (pathogenGroupEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "A group of germs that a step removes or kills together."
		   });
		addAnnotation
		  (pathogenGroupEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (pathogenGroupEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Bacteria, such as E. coli and Campylobacter."
		   });
		addAnnotation
		  (pathogenGroupEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Viruses, such as rotavirus."
		   });
		addAnnotation
		  (pathogenGroupEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Giardia cysts."
		   });
		addAnnotation
		  (pathogenGroupEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Cryptosporidium oocysts."
		   });
		addAnnotation
		  (pathogenGroupEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Eggs of worms."
		   });
		addAnnotation
		  (costCategoryEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Category of a cost over the life of a service."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "First building and buying (CapEx)."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Operation and minor maintenance, labour among it (OpEx)."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Energy; part of operation, shown apart."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Cartridges, chlorine, tests; part of operation, shown apart."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Renewal and replacement (CapManEx)."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Interest and fees (CoC)."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Support by those near by: training, visits (ExpDS)."
		   });
		addAnnotation
		  (costCategoryEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Support by those further off: planning, policy (ExpIDS)."
		   });
		addAnnotation
		  (supplyKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Another way to get the same water."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A piped supply."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Water brought by tanker."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A well or borehole."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Bottled water."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Water carried by people from a source."
		   });
		addAnnotation
		  (supplyKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (priceBasisEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Whether prices and discount rate hold inflation."
		   });
		addAnnotation
		  (priceBasisEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "In money of the base year; the discount rate is without inflation."
		   });
		addAnnotation
		  (priceBasisEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "In money of each year; the discount rate holds inflation."
		   });
		addAnnotation
		  (readingKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What was read."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of water above the floor of a tank."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Volume of water in a tank."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A meter\'s running total."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Depth of rain in the day before."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "Free chlorine."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Turbidity."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "pH of the water."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Temperature of the water."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "A flow, by bucket and stopwatch or meter."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "A pressure."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Running hours of a pump, total."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "An energy meter\'s running total."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "Level during a leak test with all valves shut."
		   });
		addAnnotation
		  (readingKindEEnum.getELiterals().get(14),
		   source,
		   new String[]
		   {
			   "documentation", "Pressure during a test of a pipe."
		   });
		addAnnotation
		  (waterParameterEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a laboratory or a kit found."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "E. coli in 100 mL."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Coliform bacteria in 100 mL."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "Hydrogen-sulphide strip: 1 black, 0 clear."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Turbidity."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "pH of the water."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "Free chlorine."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "Electrical conductivity."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "Hardness as calcium carbonate."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Alkalinity as calcium carbonate."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "Lead."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Copper."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "Zinc."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "Iron."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(14),
		   source,
		   new String[]
		   {
			   "documentation", "Aluminium."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(15),
		   source,
		   new String[]
		   {
			   "documentation", "Arsenic."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(16),
		   source,
		   new String[]
		   {
			   "documentation", "Nitrate."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(17),
		   source,
		   new String[]
		   {
			   "documentation", "Pesticides, sum or named in the note."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(18),
		   source,
		   new String[]
		   {
			   "documentation", "Hydrocarbons, sum or named in the note."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(19),
		   source,
		   new String[]
		   {
			   "documentation", "Asbestos fibres."
		   });
		addAnnotation
		  (waterParameterEEnum.getELiterals().get(20),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, named in the note."
		   });
		addAnnotation
		  (incidentKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What went wrong."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "The water was spoiled."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "People fell ill and the water may be the cause."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A pipe or tank broke."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Water was lost slowly."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "A tap ran unnoticed."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(6),
		   source,
		   new String[]
		   {
			   "documentation", "The pump did not work."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(7),
		   source,
		   new String[]
		   {
			   "documentation", "There was no power."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(8),
		   source,
		   new String[]
		   {
			   "documentation", "A tank was empty."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(9),
		   source,
		   new String[]
		   {
			   "documentation", "Spilled water did harm."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(10),
		   source,
		   new String[]
		   {
			   "documentation", "A gutter, pipe or filter was blocked."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(11),
		   source,
		   new String[]
		   {
			   "documentation", "Water or parts were taken."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(12),
		   source,
		   new String[]
		   {
			   "documentation", "A person was hurt."
		   });
		addAnnotation
		  (incidentKindEEnum.getELiterals().get(13),
		   source,
		   new String[]
		   {
			   "documentation", "Something else, described in the note."
		   });
		addAnnotation
		  (remarkKindEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "What a reviewer says."
		   });
		addAnnotation
		  (remarkKindEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (remarkKindEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Something to be explained."
		   });
		addAnnotation
		  (remarkKindEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Something that should be changed."
		   });
		addAnnotation
		  (remarkKindEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "An answer to a question or objection."
		   });
		addAnnotation
		  (remarkKindEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "The design was looked at and is accepted, on the basis that the fingerprint holds."
		   });
		addAnnotation
		  (valueTypeEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Type of the value of an extension entry."
		   });
		addAnnotation
		  (valueTypeEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Text."
		   });
		addAnnotation
		  (valueTypeEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "A number, as written by Java."
		   });
		addAnnotation
		  (valueTypeEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A number with its unit."
		   });
		addAnnotation
		  (valueTypeEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "true or false."
		   });
		addAnnotation
		  (valueTypeEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "A calendar day."
		   });
		addAnnotation
		  (valueTypeEEnum.getELiterals().get(5),
		   source,
		   new String[]
		   {
			   "documentation", "A JSON document."
		   });
		addAnnotation
		  (unitPreferenceEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "In which units a person wants to read; never changes a number."
		   });
		addAnnotation
		  (unitPreferenceEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Metric units."
		   });
		addAnnotation
		  (unitPreferenceEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "US customary units."
		   });
		addAnnotation
		  (unitPreferenceEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "Metric units but for imperial gallons, feet and inches."
		   });
		addAnnotation
		  (topUpSourceEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Where water from outside comes from."
		   });
		addAnnotation
		  (topUpSourceEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not stated."
		   });
		addAnnotation
		  (topUpSourceEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Lorry with a tank."
		   });
		addAnnotation
		  (topUpSourceEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "A piped supply."
		   });
		addAnnotation
		  (topUpSourceEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "A well or borehole."
		   });
		addAnnotation
		  (topUpSourceEEnum.getELiterals().get(4),
		   source,
		   new String[]
		   {
			   "documentation", "Carried by people or animals."
		   });
		addAnnotation
		  (checkAnswerEEnum,
		   source,
		   new String[]
		   {
			   "documentation", "Answer to a question of an inspection."
		   });
		addAnnotation
		  (checkAnswerEEnum.getELiterals().get(0),
		   source,
		   new String[]
		   {
			   "documentation", "Not looked at."
		   });
		addAnnotation
		  (checkAnswerEEnum.getELiterals().get(1),
		   source,
		   new String[]
		   {
			   "documentation", "Yes, the risk is there."
		   });
		addAnnotation
		  (checkAnswerEEnum.getELiterals().get(2),
		   source,
		   new String[]
		   {
			   "documentation", "No, the risk is not there."
		   });
		addAnnotation
		  (checkAnswerEEnum.getELiterals().get(3),
		   source,
		   new String[]
		   {
			   "documentation", "The question does not apply."
		   });
		addAnnotation
		  (lengthEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A length or height. Usual unit m.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LENGTH).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LENGTH).convertToString(it);"
		   });
		addAnnotation
		  (levelEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A height above (or, negative, below) the datum of the site. Usual unit m.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LEVEL).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LEVEL).convertToString(it);"
		   });
		addAnnotation
		  (boreEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A small length such as the inside diameter of a pipe, a wall thickness or a gutter width. Usual unit mm.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.BORE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.BORE).convertToString(it);"
		   });
		addAnnotation
		  (rainDepthEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A depth of rain or of water lost from a surface. Usual unit mm.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RAIN_DEPTH).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RAIN_DEPTH).convertToString(it);"
		   });
		addAnnotation
		  (particleSizeEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A particle size, such as the rating of a filter. Usual unit um.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PARTICLE_SIZE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PARTICLE_SIZE).convertToString(it);"
		   });
		addAnnotation
		  (headEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A head of water: energy for each weight of water. Usual unit m.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HEAD).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HEAD).convertToString(it);"
		   });
		addAnnotation
		  (areaEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "An area of roof or ground. Usual unit m2.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.AREA).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.AREA).convertToString(it);"
		   });
		addAnnotation
		  (openingAreaEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "An area of a small opening, such as a vent. Usual unit cm2.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.OPENING_AREA).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.OPENING_AREA).convertToString(it);"
		   });
		addAnnotation
		  (volumeEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A volume of water stored or used. Usual unit m3.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VOLUME).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VOLUME).convertToString(it);"
		   });
		addAnnotation
		  (smallVolumeEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A small volume, such as a first flush or a pressure vessel. Usual unit L.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SMALL_VOLUME).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SMALL_VOLUME).convertToString(it);"
		   });
		addAnnotation
		  (flowEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A flow in a pipe, gutter or pump. Usual unit L/s.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.FLOW).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.FLOW).convertToString(it);"
		   });
		addAnnotation
		  (tapFlowEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A flow at a tap, filter or diverter. Usual unit L/min.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TAP_FLOW).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TAP_FLOW).convertToString(it);"
		   });
		addAnnotation
		  (dailyVolumeEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A volume of water each day. Usual unit L/d.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAILY_VOLUME).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAILY_VOLUME).convertToString(it);"
		   });
		addAnnotation
		  (velocityEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A speed. Usual unit m/s.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VELOCITY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VELOCITY).convertToString(it);"
		   });
		addAnnotation
		  (pressureEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A pressure above that of the air around. Usual unit kPa.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE).convertToString(it);"
		   });
		addAnnotation
		  (pressureHeadEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A pressure given as metres of water; a bare m is read as metres of water. Usual unit m(head).",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE_HEAD).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE_HEAD).convertToString(it);"
		   });
		addAnnotation
		  (temperatureEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A temperature. Usual unit degC.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TEMPERATURE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TEMPERATURE).convertToString(it);"
		   });
		addAnnotation
		  (powerEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A power. Usual unit W.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.POWER).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.POWER).convertToString(it);"
		   });
		addAnnotation
		  (specificEnergyEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "An energy for each volume of water. Usual unit kWh/m3.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SPECIFIC_ENERGY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SPECIFIC_ENERGY).convertToString(it);"
		   });
		addAnnotation
		  (secondsEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A few seconds. Usual unit s.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SECONDS).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SECONDS).convertToString(it);"
		   });
		addAnnotation
		  (minutesEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A short span of time. Usual unit min.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MINUTES).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MINUTES).convertToString(it);"
		   });
		addAnnotation
		  (hoursEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A span of hours. Usual unit h.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HOURS).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HOURS).convertToString(it);"
		   });
		addAnnotation
		  (daysEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A span of days. Usual unit d.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAYS).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAYS).convertToString(it);"
		   });
		addAnnotation
		  (yearsEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A span of years. Usual unit yr.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.YEARS).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.YEARS).convertToString(it);"
		   });
		addAnnotation
		  (intensityEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A rain intensity. Usual unit mm/h.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.INTENSITY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.INTENSITY).convertToString(it);"
		   });
		addAnnotation
		  (concentrationEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A mass of something in a volume of water. Usual unit mg/L.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.CONCENTRATION).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.CONCENTRATION).convertToString(it);"
		   });
		addAnnotation
		  (uvDoseEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A dose of ultraviolet light. Usual unit mJ/cm2.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UV_DOSE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UV_DOSE).convertToString(it);"
		   });
		addAnnotation
		  (turbidityEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A turbidity. Usual unit NTU.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TURBIDITY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TURBIDITY).convertToString(it);"
		   });
		addAnnotation
		  (densityEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A mass for each volume. Usual unit kg/L.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DENSITY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DENSITY).convertToString(it);"
		   });
		addAnnotation
		  (massEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A mass. Usual unit kg.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MASS).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MASS).convertToString(it);"
		   });
		addAnnotation
		  (rotationalSpeedEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A speed of rotation. Usual unit rpm.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ROTATIONAL_SPEED).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ROTATIONAL_SPEED).convertToString(it);"
		   });
		addAnnotation
		  (angleEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "An angle. Usual unit deg.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ANGLE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ANGLE).convertToString(it);"
		   });
		addAnnotation
		  (rateEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A number of events in a time. Usual unit 1/yr.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RATE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RATE).convertToString(it);"
		   });
		addAnnotation
		  (moneyEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "An amount in the currency of the site. Usual unit cur.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MONEY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MONEY).convertToString(it);"
		   });
		addAnnotation
		  (unitCostEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A cost for each volume of water. Usual unit cur/m3.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UNIT_COST).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UNIT_COST).convertToString(it);"
		   });
		addAnnotation
		  (energyCostEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A cost for each amount of energy. Usual unit cur/kWh.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ENERGY_COST).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ENERGY_COST).convertToString(it);"
		   });
		addAnnotation
		  (coefficientEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A pure number.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.COEFFICIENT).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.COEFFICIENT).convertToString(it);"
		   });
		addAnnotation
		  (shareEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A share of a whole, as 65 % or 0.65. Usual unit %.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SHARE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SHARE).convertToString(it);"
		   });
		addAnnotation
		  (measurementEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A measured value in any unit of the catalogue.",
			   "create", "return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MEASUREMENT).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MEASUREMENT).convertToString(it);"
		   });
		addAnnotation
		  (dateEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A calendar day, as 2024-03-31.",
			   "create", "return (java.time.LocalDate) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DATE).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DATE).convertToString(it);"
		   });
		addAnnotation
		  (dayOfYearEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A day that comes every year, as 03-31 (month, day).",
			   "create", "return (java.time.MonthDay) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAY_OF_YEAR).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAY_OF_YEAR).convertToString(it);"
		   });
		addAnnotation
		  (timeOfDayEDataType,
		   source,
		   new String[]
		   {
			   "documentation", "A time of day, as 10:30.",
			   "create", "return (java.time.LocalTime) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TIME_OF_DAY).createFromString(it);",
			   "convert", "return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TIME_OF_DAY).convertToString(it);"
		   });
	}

	/**
	 * Initializes the annotations for <b>http://www.roofspring.org/value</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createValueAnnotations()
	{
		String source = "http://www.roofspring.org/value";
		addAnnotation
		  (getSite_SchemaVersion(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getSite_Latitude(),
		   source,
		   new String[]
		   {
			   "min", "-90",
			   "max", "90"
		   });
		addAnnotation
		  (getSite_Altitude(),
		   source,
		   new String[]
		   {
			   "min", "-430",
			   "max", "5500",
			   "default", "0 m",
			   "defaultSource", "sea level assumed; enter the real one, for it bears on suction, boiling and air pressure"
		   });
		addAnnotation
		  (getSite_WaterTemperatureMin(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "45",
			   "default", "10 degC",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getSite_WaterTemperatureUsual(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "45",
			   "default", "20 degC",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getSite_WaterTemperatureMax(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "60",
			   "default", "30 degC",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getTarget_TimeReliability(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "95 %",
			   "defaultSource", "a choice of this program; agree it with the people who live on the water"
		   });
		addAnnotation
		  (getTarget_VolumetricReliability(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTarget_LongestShortage(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "316224000"
		   });
		addAnnotation
		  (getTarget_Reserve(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "316224000"
		   });
		addAnnotation
		  (getTarget_PumpOutage(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "31622400"
		   });
		addAnnotation
		  (getTarget_Confidence(),
		   source,
		   new String[]
		   {
			   "min", "0.5",
			   "max", "0.999",
			   "default", "90 %",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getTarget_Budget(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getTarget_InfectionTarget(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "0.0001",
			   "defaultSource", "from memory, verify against Regli et al. 1991, Modeling the risk from Giardia and viruses in drinking water"
		   });
		addAnnotation
		  (getTarget_BurdenTarget(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "0.000001",
			   "defaultSource", "WHO Guidelines for drinking-water quality, as quoted by Australian Drinking Water Guidelines A3.4"
		   });
		addAnnotation
		  (getRainSource_StationAltitude(),
		   source,
		   new String[]
		   {
			   "min", "-430",
			   "max", "5500"
		   });
		addAnnotation
		  (getRainSource_Distance(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "20000000"
		   });
		addAnnotation
		  (getRainSource_SyntheticYears(),
		   source,
		   new String[]
		   {
			   "min", "1",
			   "max", "1000"
		   });
		addAnnotation
		  (getRainSource_ReturnPeriod(),
		   source,
		   new String[]
		   {
			   "above", "31556952",
			   "max", "31556952000",
			   "default", "5 yr",
			   "defaultSource", "common practice for eaves gutters, no source; local code rules"
		   });
		addAnnotation
		  (getRainSource_PeakDuration(),
		   source,
		   new String[]
		   {
			   "min", "60",
			   "max", "86400",
			   "default", "5 min",
			   "defaultSource", "common practice for roofs, no source; local code rules"
		   });
		addAnnotation
		  (getRainSource_DayToShortRatio(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getRainSource_DayFactor(),
		   source,
		   new String[]
		   {
			   "min", "1",
			   "max", "2",
			   "default", "1.13",
			   "defaultSource", "from memory, verify against D. M. Hershfield and W. T. Wilson 1958, in WMO-No. 168, Guide to Hydrological Practices"
		   });
		addAnnotation
		  (getMonthlyNormal_Month(),
		   source,
		   new String[]
		   {
			   "min", "1",
			   "max", "12"
		   });
		addAnnotation
		  (getMonthlyNormal_Depth(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "5"
		   });
		addAnnotation
		  (getMonthlyNormal_WetDays(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "31"
		   });
		addAnnotation
		  (getMonthlyNormal_Evaporation(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getClimateStress_DepthFactor(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "5",
			   "default", "1",
			   "defaultSource", "no change"
		   });
		addAnnotation
		  (getClimateStress_DrySeasonLonger(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10368000"
		   });
		addAnnotation
		  (getSeasonFactor_Factor(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "5"
		   });
		addAnnotation
		  (getIntensityPoint_Duration(),
		   source,
		   new String[]
		   {
			   "min", "60",
			   "max", "259200"
		   });
		addAnnotation
		  (getIntensityPoint_ReturnPeriod(),
		   source,
		   new String[]
		   {
			   "min", "31556952",
			   "max", "31556952000"
		   });
		addAnnotation
		  (getIntensityPoint_Intensity(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "2000"
		   });
		addAnnotation
		  (getRoof_PlanArea(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getRoof_Pitch(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "80"
		   });
		addAnnotation
		  (getRoof_EavesLength(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getRoof_SlopeHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getRoof_EavesLevel(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getRoof_RunoffCoefficient(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "80 %",
			   "defaultSource", "common value for hard roofs; compare India Water Portal training table as quoted: metal 70 to 90 %, tile 80 to 90 %, concrete 60 to 80 %"
		   });
		addAnnotation
		  (getRoof_InitialLoss(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.02",
			   "default", "0 mm",
			   "defaultSource", "none taken off unless given"
		   });
		addAnnotation
		  (getRoof_CollectionEfficiency(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getRoof_PeakRunoff(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "100 %",
			   "defaultSource", "common practice for storm flow of roofs, no source"
		   });
		addAnnotation
		  (getRoof_Age(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "9467085600"
		   });
		addAnnotation
		  (getRoofDrain_Share(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getGutter_Width(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "2"
		   });
		addAnnotation
		  (getGutter_SoleWidth(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "2"
		   });
		addAnnotation
		  (getGutter_Depth(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getGutter_Freeboard(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.5"
		   });
		addAnnotation
		  (getGutter_Length(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "500"
		   });
		addAnnotation
		  (getGutter_Slope(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.2",
			   "default", "0 %",
			   "defaultSource", "level gutter assumed, on the safe side"
		   });
		addAnnotation
		  (getGutter_Roughness(),
		   source,
		   new String[]
		   {
			   "min", "0.005",
			   "max", "0.1",
			   "default", "0.012",
			   "defaultSource", "Manning n between 0.010 and 0.015, Warwick Development Technology Unit, gutter notes"
		   });
		addAnnotation
		  (getGutter_Level(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getGutter_Bends(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100"
		   });
		addAnnotation
		  (getGutterOutlet_Position(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "500"
		   });
		addAnnotation
		  (getGutterOutlet_Diameter(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getDownpipe_Bore(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getDownpipe_Length(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "200"
		   });
		addAnnotation
		  (getDownpipe_FillShare(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1",
			   "default", "33 %",
			   "defaultSource", "from memory, verify against EN 12056-3:2000, filling degree of downpipes"
		   });
		addAnnotation
		  (getScreen_Mesh(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.05"
		   });
		addAnnotation
		  (getScreen_Area(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "10"
		   });
		addAnnotation
		  (getScreen_OpenShare(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getScreen_BlockedShare(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "50 %",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getScreen_LostShare(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getScreen_RimHeight(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1",
			   "default", "20 mm",
			   "defaultSource", "assumed; replace with the height of the rim"
		   });
		addAnnotation
		  (getFirstFlushDiverter_Depth(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.02"
		   });
		addAnnotation
		  (getFirstFlushDiverter_Volume(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "20"
		   });
		addAnnotation
		  (getFirstFlushDiverter_ResetDryDays(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "31536000",
			   "default", "3 d",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getFirstFlushDiverter_DrainTime(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "2592000"
		   });
		addAnnotation
		  (getFirstFlushDiverter_DrainOrifice(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.1"
		   });
		addAnnotation
		  (getFirstFlushDiverter_Height(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "20",
			   "default", "1 m",
			   "defaultSource", "assumed; replace with its height"
		   });
		addAnnotation
		  (getTank_Capacity(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getTank_DeadVolume(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000",
			   "default", "0 m3",
			   "defaultSource", "none unless given"
		   });
		addAnnotation
		  (getTank_ReserveVolume(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getTank_BaseLevel(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000",
			   "default", "0 m",
			   "defaultSource", "the site datum"
		   });
		addAnnotation
		  (getTank_Height(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_OutletHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_ReserveOutletHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_OverflowHeight(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_InletHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "60"
		   });
		addAnnotation
		  (getTank_StartHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_StopHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_CurrentHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTank_Diameter(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "200"
		   });
		addAnnotation
		  (getTank_Length(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "500"
		   });
		addAnnotation
		  (getTank_Width(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "500"
		   });
		addAnnotation
		  (getTank_OpenArea(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getTank_EvaporationFactor(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "2",
			   "default", "1.05",
			   "defaultSource", "from memory, verify against FAO Irrigation and Drainage Paper 56, Table 12"
		   });
		addAnnotation
		  (getTank_Leakage(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.00115740740741"
		   });
		addAnnotation
		  (getTank_OverflowDiameter(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTank_VentArea(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10"
		   });
		addAnnotation
		  (getTank_ScreenMesh(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.05"
		   });
		addAnnotation
		  (getLevelVolumePoint_Height(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getLevelVolumePoint_Volume(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getSiting_LatrineDistance(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getSiting_RefuseDistance(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getSiting_GroundwaterDepth(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "500"
		   });
		addAnnotation
		  (getSiting_BurialDepth(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getSiting_BaseArea(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getSiting_EmptyMass(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000000"
		   });
		addAnnotation
		  (getSiting_SoilCover(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "20"
		   });
		addAnnotation
		  (getSiting_AllowedBearing(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "10000000"
		   });
		addAnnotation
		  (getSiting_StandHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100"
		   });
		addAnnotation
		  (getSiting_FoundationDistance(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getSiting_SoakawayLength(),
		   source,
		   new String[]
		   {
			   "min", "0.2",
			   "max", "100"
		   });
		addAnnotation
		  (getSiting_SoakawayWidth(),
		   source,
		   new String[]
		   {
			   "min", "0.2",
			   "max", "100"
		   });
		addAnnotation
		  (getSiting_SoakawayDepth(),
		   source,
		   new String[]
		   {
			   "min", "0.2",
			   "max", "20"
		   });
		addAnnotation
		  (getSiting_SoakawayVoids(),
		   source,
		   new String[]
		   {
			   "min", "0.05",
			   "max", "1",
			   "default", "30 %",
			   "defaultSource", "common practice for rubble, no source"
		   });
		addAnnotation
		  (getSiting_Infiltration(),
		   source,
		   new String[]
		   {
			   "min", "0.0036",
			   "max", "36000"
		   });
		addAnnotation
		  (getSiting_TapDrain(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTankLink_SillHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTankLink_MaxFlow(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTankLink_DailyVolume(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.115740740741"
		   });
		addAnnotation
		  (getJunction_Level(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getPipeRun_Bore(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "3"
		   });
		addAnnotation
		  (getPipeRun_Length(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getPipeRun_WallThickness(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.2"
		   });
		addAnnotation
		  (getPipeRun_ClosureTime(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "3600"
		   });
		addAnnotation
		  (getPipeRun_PressureClass(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "100000000"
		   });
		addAnnotation
		  (getPipeRun_Roughness(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.05"
		   });
		addAnnotation
		  (getPipeRun_AgedRoughness(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.05"
		   });
		addAnnotation
		  (getFitting_Count(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getFitting_LossCoefficient(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getProfilePoint_Distance(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getProfilePoint_Level(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getPumpData_MotorEfficiency(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getPumpData_RatedSpeed(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "60000"
		   });
		addAnnotation
		  (getPumpData_RatedPower(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "10000000"
		   });
		addAnnotation
		  (getPumpData_DischargeBore(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "3"
		   });
		addAnnotation
		  (getPumpData_MinSubmergence(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getPumpData_MaxStarts(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getPumpData_Price(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getPumpPoint_Flow(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10"
		   });
		addAnnotation
		  (getPumpPoint_Head(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getPumpPoint_Efficiency(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getPumpPoint_NpshRequired(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getPumpPoint_InputPower(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000000"
		   });
		addAnnotation
		  (getPump_Count(),
		   source,
		   new String[]
		   {
			   "min", "1",
			   "max", "100"
		   });
		addAnnotation
		  (getPump_Level(),
		   source,
		   new String[]
		   {
			   "min", "-1000",
			   "max", "9000"
		   });
		addAnnotation
		  (getPump_SpeedRatio(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "2",
			   "default", "1",
			   "defaultSource", "rated speed"
		   });
		addAnnotation
		  (getPump_CutOutHeight(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getPump_OutageShare(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getPump_StrokeVolume(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.1"
		   });
		addAnnotation
		  (getPump_StrokesPerMinute(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "200"
		   });
		addAnnotation
		  (getPressureVessel_Volume(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "100"
		   });
		addAnnotation
		  (getPressureVessel_Precharge(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000000"
		   });
		addAnnotation
		  (getPressureVessel_CutIn(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000000"
		   });
		addAnnotation
		  (getPressureVessel_CutOut(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000000"
		   });
		addAnnotation
		  (getPressureVessel_Level(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getTap_Level(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getTap_MinimumHead(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "980665",
			   "default", "1 m(head)",
			   "defaultSource", "common practice for plain taps, no source"
		   });
		addAnnotation
		  (getTap_DesignFlow(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.166666666667"
		   });
		addAnnotation
		  (getTap_Orifice(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.5"
		   });
		addAnnotation
		  (getTap_LossCoefficient(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getTap_Count(),
		   source,
		   new String[]
		   {
			   "min", "1",
			   "max", "1000"
		   });
		addAnnotation
		  (getTap_OpenTogether(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getTap_WalkingDistance(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getUsePeriod_Factor(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100",
			   "default", "1",
			   "defaultSource", "the full amount"
		   });
		addAnnotation
		  (getHoliday_Factor(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "0",
			   "defaultSource", "no use"
		   });
		addAnnotation
		  (getUse_Count(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000",
			   "default", "1",
			   "defaultSource", "one consumer"
		   });
		addAnnotation
		  (getUse_AmountEach(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.0115740740741"
		   });
		addAnnotation
		  (getUse_Priority(),
		   source,
		   new String[]
		   {
			   "min", "1",
			   "max", "9"
		   });
		addAnnotation
		  (getUsePeak_Share(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getRationingRule_Below(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getRationingRule_Allowed(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTopUp_Load(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getTopUp_OrderBelow(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTopUp_Delay(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "31536000"
		   });
		addAnnotation
		  (getTopUp_Price(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getTopUp_MostPerYear(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getRawWater_Turbidity(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getRawWater_Ph(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "14"
		   });
		addAnnotation
		  (getRawWater_Alkalinity(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "2000"
		   });
		addAnnotation
		  (getRawWater_ChlorineDemand(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100"
		   });
		addAnnotation
		  (getPathogenLevel_PerLitre(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000000"
		   });
		addAnnotation
		  (getPathogenLevel_Low(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000000"
		   });
		addAnnotation
		  (getPathogenLevel_High(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000000"
		   });
		addAnnotation
		  (getTreatmentTrain_Level(),
		   source,
		   new String[]
		   {
			   "min", "-500",
			   "max", "9000"
		   });
		addAnnotation
		  (getTreatmentTrain_DesignFlow(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.166666666667"
		   });
		addAnnotation
		  (getTreatmentStep_Rating(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.01"
		   });
		addAnnotation
		  (getTreatmentStep_Availability(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1",
			   "default", "100 %",
			   "defaultSource", "taken as always working unless given"
		   });
		addAnnotation
		  (getTreatmentStep_MaxFlow(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.166666666667"
		   });
		addAnnotation
		  (getTreatmentStep_HeadLossClean(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "980665"
		   });
		addAnnotation
		  (getTreatmentStep_HeadLossFouled(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "980665"
		   });
		addAnnotation
		  (getTreatmentStep_ReferenceFlow(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "0.166666666667"
		   });
		addAnnotation
		  (getTreatmentStep_ChangeInterval(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "316224000"
		   });
		addAnnotation
		  (getTreatmentStep_ChangeVolume(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getTreatmentStep_ChangeCost(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getTreatmentStep_MaxTurbidity(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getTreatmentStep_Power(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getTreatmentStep_UvDose(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000"
		   });
		addAnnotation
		  (getTreatmentStep_Strength(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getTreatmentStep_ProductDensity(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "5000"
		   });
		addAnnotation
		  (getTreatmentStep_ProductAge(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "316224000"
		   });
		addAnnotation
		  (getTreatmentStep_Dose(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "200"
		   });
		addAnnotation
		  (getTreatmentStep_Residual(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "50"
		   });
		addAnnotation
		  (getTreatmentStep_ContactVolume(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "10000"
		   });
		addAnnotation
		  (getTreatmentStep_ContactTime(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "604800"
		   });
		addAnnotation
		  (getTreatmentStep_Baffling(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1",
			   "default", "0.1",
			   "defaultSource", "from memory, verify against US EPA Surface Water Treatment Rule guidance manual 1991, unbaffled tank"
		   });
		addAnnotation
		  (getTreatmentStep_BatchVolume(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "10"
		   });
		addAnnotation
		  (getLogReduction_Low(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "12"
		   });
		addAnnotation
		  (getLogReduction_High(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "12"
		   });
		addAnnotation
		  (getCostItem_Amount(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getCostItem_Quantity(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000000",
			   "default", "1",
			   "defaultSource", "one unit"
		   });
		addAnnotation
		  (getCostItem_FirstYear(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "200"
		   });
		addAnnotation
		  (getCostItem_Interval(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "6311390400"
		   });
		addAnnotation
		  (getCostItem_Life(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "6311390400"
		   });
		addAnnotation
		  (getCostItem_YearlyChange(),
		   source,
		   new String[]
		   {
			   "min", "-0.5",
			   "max", "1"
		   });
		addAnnotation
		  (getAlternativeSupply_Price(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getAlternativeSupply_Capital(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getAlternativeSupply_CapitalLife(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "6311390400"
		   });
		addAnnotation
		  (getAlternativeSupply_YearlyCost(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getAlternativeSupply_Energy(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getAlternativeSupply_Reliability(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1"
		   });
		addAnnotation
		  (getEconomy_DiscountRate(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.5",
			   "default", "4 %",
			   "defaultSource", "a choice of this program; use the rate of the one who pays"
		   });
		addAnnotation
		  (getEconomy_Inflation(),
		   source,
		   new String[]
		   {
			   "min", "-0.1",
			   "max", "0.5"
		   });
		addAnnotation
		  (getEconomy_Horizon(),
		   source,
		   new String[]
		   {
			   "min", "31556952",
			   "max", "6311390400",
			   "default", "20 yr",
			   "defaultSource", "common practice, no source"
		   });
		addAnnotation
		  (getEconomy_BaseYear(),
		   source,
		   new String[]
		   {
			   "min", "1900",
			   "max", "2300"
		   });
		addAnnotation
		  (getEconomy_EnergyPrice(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getEconomy_LabourPrice(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getEconomy_Tariff(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getEconomy_People(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getStage_Budget(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getUpkeepTask_Interval(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "3155760000"
		   });
		addAnnotation
		  (getUpkeepTask_AfterVolume(),
		   source,
		   new String[]
		   {
			   "above", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getUpkeepTask_Effort(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "3600000"
		   });
		addAnnotation
		  (getUpkeepTask_Cost(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getWaterTest_Value(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getWaterTest_Limit(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getIncident_VolumeLost(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "1000000"
		   });
		addAnnotation
		  (getSharedScheme_Families(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100000"
		   });
		addAnnotation
		  (getSharedScheme_PeoplePerFamily(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "100"
		   });
		addAnnotation
		  (getSharedScheme_Ration(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.00115740740741"
		   });
		addAnnotation
		  (getSharedScheme_MonthlyFee(),
		   source,
		   new String[]
		   {
			   "min", "0"
		   });
		addAnnotation
		  (getSharedScheme_NightLoss(),
		   source,
		   new String[]
		   {
			   "min", "0",
			   "max", "0.0166666666667"
		   });
		addAnnotation
		  (getExtensionEntry_Schema(),
		   source,
		   new String[]
		   {
			   "min", "1"
		   });
	}

	/**
	 * Initializes the annotations for <b>http://www.roofspring.org/quantity</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createQuantityAnnotations()
	{
		String source = "http://www.roofspring.org/quantity";
		addAnnotation
		  (lengthEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "LENGTH",
			   "unit", "m"
		   });
		addAnnotation
		  (levelEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "LENGTH",
			   "unit", "m"
		   });
		addAnnotation
		  (boreEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "LENGTH",
			   "unit", "mm"
		   });
		addAnnotation
		  (rainDepthEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "LENGTH",
			   "unit", "mm"
		   });
		addAnnotation
		  (particleSizeEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "LENGTH",
			   "unit", "um"
		   });
		addAnnotation
		  (headEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "LENGTH",
			   "unit", "m"
		   });
		addAnnotation
		  (areaEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "AREA",
			   "unit", "m2"
		   });
		addAnnotation
		  (openingAreaEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "AREA",
			   "unit", "cm2"
		   });
		addAnnotation
		  (volumeEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "VOLUME",
			   "unit", "m3"
		   });
		addAnnotation
		  (smallVolumeEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "VOLUME",
			   "unit", "L"
		   });
		addAnnotation
		  (flowEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "FLOW",
			   "unit", "L/s"
		   });
		addAnnotation
		  (tapFlowEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "FLOW",
			   "unit", "L/min"
		   });
		addAnnotation
		  (dailyVolumeEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "FLOW",
			   "unit", "L/d"
		   });
		addAnnotation
		  (velocityEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "VELOCITY",
			   "unit", "m/s"
		   });
		addAnnotation
		  (pressureEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "PRESSURE",
			   "unit", "kPa"
		   });
		addAnnotation
		  (pressureHeadEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "PRESSURE",
			   "unit", "m(head)"
		   });
		addAnnotation
		  (temperatureEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "TEMPERATURE",
			   "unit", "degC"
		   });
		addAnnotation
		  (powerEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "POWER",
			   "unit", "W"
		   });
		addAnnotation
		  (specificEnergyEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "SPECIFIC_ENERGY",
			   "unit", "kWh/m3"
		   });
		addAnnotation
		  (secondsEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "DURATION",
			   "unit", "s"
		   });
		addAnnotation
		  (minutesEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "DURATION",
			   "unit", "min"
		   });
		addAnnotation
		  (hoursEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "DURATION",
			   "unit", "h"
		   });
		addAnnotation
		  (daysEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "DURATION",
			   "unit", "d"
		   });
		addAnnotation
		  (yearsEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "DURATION",
			   "unit", "yr"
		   });
		addAnnotation
		  (intensityEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "INTENSITY",
			   "unit", "mm/h"
		   });
		addAnnotation
		  (concentrationEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "CONCENTRATION",
			   "unit", "mg/L"
		   });
		addAnnotation
		  (uvDoseEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "UV_DOSE",
			   "unit", "mJ/cm2"
		   });
		addAnnotation
		  (turbidityEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "TURBIDITY",
			   "unit", "NTU"
		   });
		addAnnotation
		  (densityEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "DENSITY",
			   "unit", "kg/L"
		   });
		addAnnotation
		  (massEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "MASS",
			   "unit", "kg"
		   });
		addAnnotation
		  (rotationalSpeedEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "ROTATION",
			   "unit", "rpm"
		   });
		addAnnotation
		  (angleEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "ANGLE",
			   "unit", "deg"
		   });
		addAnnotation
		  (rateEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "FREQUENCY",
			   "unit", "1/yr"
		   });
		addAnnotation
		  (moneyEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "MONEY",
			   "unit", "cur"
		   });
		addAnnotation
		  (unitCostEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "UNIT_COST",
			   "unit", "cur/m3"
		   });
		addAnnotation
		  (energyCostEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "ENERGY_COST",
			   "unit", "cur/kWh"
		   });
		addAnnotation
		  (coefficientEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "RATIO",
			   "unit", "1"
		   });
		addAnnotation
		  (shareEDataType,
		   source,
		   new String[]
		   {
			   "dimension", "RATIO",
			   "unit", "%"
		   });
		addAnnotation
		  (measurementEDataType,
		   source,
		   new String[]
		   {
		   });
	}

	/**
	 * Initializes the annotations for <b>http://www.roofspring.org/time</b>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void createTimeAnnotations()
	{
		String source = "http://www.roofspring.org/time";
		addAnnotation
		  (dateEDataType,
		   source,
		   new String[]
		   {
			   "kind", "DATE"
		   });
		addAnnotation
		  (dayOfYearEDataType,
		   source,
		   new String[]
		   {
			   "kind", "DAY_OF_YEAR"
		   });
		addAnnotation
		  (timeOfDayEDataType,
		   source,
		   new String[]
		   {
			   "kind", "TIME_OF_DAY"
		   });
	}

} //SitePackageImpl

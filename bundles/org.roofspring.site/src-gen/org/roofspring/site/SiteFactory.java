/**
 */
package org.roofspring.site;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.roofspring.site.SitePackage
 * @generated
 */
public interface SiteFactory extends EFactory
{
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	SiteFactory eINSTANCE = org.roofspring.site.internal.impl.SiteFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Site</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Site</em>'.
	 * @generated
	 */
	Site createSite();

	/**
	 * Returns a new object of class '<em>Target</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Target</em>'.
	 * @generated
	 */
	Target createTarget();

	/**
	 * Returns a new object of class '<em>Rain Source</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Rain Source</em>'.
	 * @generated
	 */
	RainSource createRainSource();

	/**
	 * Returns a new object of class '<em>Monthly Normal</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Monthly Normal</em>'.
	 * @generated
	 */
	MonthlyNormal createMonthlyNormal();

	/**
	 * Returns a new object of class '<em>Climate Stress</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Climate Stress</em>'.
	 * @generated
	 */
	ClimateStress createClimateStress();

	/**
	 * Returns a new object of class '<em>Season Factor</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Season Factor</em>'.
	 * @generated
	 */
	SeasonFactor createSeasonFactor();

	/**
	 * Returns a new object of class '<em>Intensity Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Intensity Point</em>'.
	 * @generated
	 */
	IntensityPoint createIntensityPoint();

	/**
	 * Returns a new object of class '<em>Roof</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Roof</em>'.
	 * @generated
	 */
	Roof createRoof();

	/**
	 * Returns a new object of class '<em>Roof Drain</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Roof Drain</em>'.
	 * @generated
	 */
	RoofDrain createRoofDrain();

	/**
	 * Returns a new object of class '<em>Gutter</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Gutter</em>'.
	 * @generated
	 */
	Gutter createGutter();

	/**
	 * Returns a new object of class '<em>Gutter Outlet</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Gutter Outlet</em>'.
	 * @generated
	 */
	GutterOutlet createGutterOutlet();

	/**
	 * Returns a new object of class '<em>Downpipe</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Downpipe</em>'.
	 * @generated
	 */
	Downpipe createDownpipe();

	/**
	 * Returns a new object of class '<em>Screen</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Screen</em>'.
	 * @generated
	 */
	Screen createScreen();

	/**
	 * Returns a new object of class '<em>First Flush Diverter</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>First Flush Diverter</em>'.
	 * @generated
	 */
	FirstFlushDiverter createFirstFlushDiverter();

	/**
	 * Returns a new object of class '<em>Tank</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Tank</em>'.
	 * @generated
	 */
	Tank createTank();

	/**
	 * Returns a new object of class '<em>Level Volume Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Level Volume Point</em>'.
	 * @generated
	 */
	LevelVolumePoint createLevelVolumePoint();

	/**
	 * Returns a new object of class '<em>Siting</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Siting</em>'.
	 * @generated
	 */
	Siting createSiting();

	/**
	 * Returns a new object of class '<em>Tank Link</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Tank Link</em>'.
	 * @generated
	 */
	TankLink createTankLink();

	/**
	 * Returns a new object of class '<em>Junction</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Junction</em>'.
	 * @generated
	 */
	Junction createJunction();

	/**
	 * Returns a new object of class '<em>Pipe Run</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pipe Run</em>'.
	 * @generated
	 */
	PipeRun createPipeRun();

	/**
	 * Returns a new object of class '<em>Fitting</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fitting</em>'.
	 * @generated
	 */
	Fitting createFitting();

	/**
	 * Returns a new object of class '<em>Profile Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Profile Point</em>'.
	 * @generated
	 */
	ProfilePoint createProfilePoint();

	/**
	 * Returns a new object of class '<em>Pump Point</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pump Point</em>'.
	 * @generated
	 */
	PumpPoint createPumpPoint();

	/**
	 * Returns a new object of class '<em>Pump</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pump</em>'.
	 * @generated
	 */
	Pump createPump();

	/**
	 * Returns a new object of class '<em>Pump Candidate</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pump Candidate</em>'.
	 * @generated
	 */
	PumpCandidate createPumpCandidate();

	/**
	 * Returns a new object of class '<em>Supply Time</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Supply Time</em>'.
	 * @generated
	 */
	SupplyTime createSupplyTime();

	/**
	 * Returns a new object of class '<em>Pressure Vessel</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pressure Vessel</em>'.
	 * @generated
	 */
	PressureVessel createPressureVessel();

	/**
	 * Returns a new object of class '<em>Tap</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Tap</em>'.
	 * @generated
	 */
	Tap createTap();

	/**
	 * Returns a new object of class '<em>Use Calendar</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Use Calendar</em>'.
	 * @generated
	 */
	UseCalendar createUseCalendar();

	/**
	 * Returns a new object of class '<em>Use Period</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Use Period</em>'.
	 * @generated
	 */
	UsePeriod createUsePeriod();

	/**
	 * Returns a new object of class '<em>Holiday</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Holiday</em>'.
	 * @generated
	 */
	Holiday createHoliday();

	/**
	 * Returns a new object of class '<em>Use</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Use</em>'.
	 * @generated
	 */
	Use createUse();

	/**
	 * Returns a new object of class '<em>Use Peak</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Use Peak</em>'.
	 * @generated
	 */
	UsePeak createUsePeak();

	/**
	 * Returns a new object of class '<em>Rationing Rule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Rationing Rule</em>'.
	 * @generated
	 */
	RationingRule createRationingRule();

	/**
	 * Returns a new object of class '<em>Top Up</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Top Up</em>'.
	 * @generated
	 */
	TopUp createTopUp();

	/**
	 * Returns a new object of class '<em>Raw Water</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Raw Water</em>'.
	 * @generated
	 */
	RawWater createRawWater();

	/**
	 * Returns a new object of class '<em>Pathogen Level</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Pathogen Level</em>'.
	 * @generated
	 */
	PathogenLevel createPathogenLevel();

	/**
	 * Returns a new object of class '<em>Treatment Train</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Treatment Train</em>'.
	 * @generated
	 */
	TreatmentTrain createTreatmentTrain();

	/**
	 * Returns a new object of class '<em>Treatment Step</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Treatment Step</em>'.
	 * @generated
	 */
	TreatmentStep createTreatmentStep();

	/**
	 * Returns a new object of class '<em>Log Reduction</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Log Reduction</em>'.
	 * @generated
	 */
	LogReduction createLogReduction();

	/**
	 * Returns a new object of class '<em>Cost Item</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cost Item</em>'.
	 * @generated
	 */
	CostItem createCostItem();

	/**
	 * Returns a new object of class '<em>Alternative Supply</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Alternative Supply</em>'.
	 * @generated
	 */
	AlternativeSupply createAlternativeSupply();

	/**
	 * Returns a new object of class '<em>Economy</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Economy</em>'.
	 * @generated
	 */
	Economy createEconomy();

	/**
	 * Returns a new object of class '<em>Option</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Option</em>'.
	 * @generated
	 */
	Option createOption();

	/**
	 * Returns a new object of class '<em>Stage</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stage</em>'.
	 * @generated
	 */
	Stage createStage();

	/**
	 * Returns a new object of class '<em>Change</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Change</em>'.
	 * @generated
	 */
	Change createChange();

	/**
	 * Returns a new object of class '<em>Upkeep Task</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Upkeep Task</em>'.
	 * @generated
	 */
	UpkeepTask createUpkeepTask();

	/**
	 * Returns a new object of class '<em>Safety Measure</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Safety Measure</em>'.
	 * @generated
	 */
	SafetyMeasure createSafetyMeasure();

	/**
	 * Returns a new object of class '<em>Inspection</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Inspection</em>'.
	 * @generated
	 */
	Inspection createInspection();

	/**
	 * Returns a new object of class '<em>Inspection Answer</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Inspection Answer</em>'.
	 * @generated
	 */
	InspectionAnswer createInspectionAnswer();

	/**
	 * Returns a new object of class '<em>Reading</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Reading</em>'.
	 * @generated
	 */
	Reading createReading();

	/**
	 * Returns a new object of class '<em>Water Test</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Water Test</em>'.
	 * @generated
	 */
	WaterTest createWaterTest();

	/**
	 * Returns a new object of class '<em>Incident</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Incident</em>'.
	 * @generated
	 */
	Incident createIncident();

	/**
	 * Returns a new object of class '<em>Shared Scheme</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Shared Scheme</em>'.
	 * @generated
	 */
	SharedScheme createSharedScheme();

	/**
	 * Returns a new object of class '<em>Cash Entry</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cash Entry</em>'.
	 * @generated
	 */
	CashEntry createCashEntry();

	/**
	 * Returns a new object of class '<em>Remark</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Remark</em>'.
	 * @generated
	 */
	Remark createRemark();

	/**
	 * Returns a new object of class '<em>Extension Entry</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Extension Entry</em>'.
	 * @generated
	 */
	ExtensionEntry createExtensionEntry();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	SitePackage getSitePackage();

} //SiteFactory

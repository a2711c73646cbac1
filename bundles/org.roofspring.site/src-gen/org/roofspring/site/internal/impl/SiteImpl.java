/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.AlternativeSupply;
import org.roofspring.site.CostItem;
import org.roofspring.site.Downpipe;
import org.roofspring.site.Economy;
import org.roofspring.site.ExtensionEntry;
import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.Gutter;
import org.roofspring.site.Incident;
import org.roofspring.site.Inspection;
import org.roofspring.site.Junction;
import org.roofspring.site.Option;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Pump;
import org.roofspring.site.RainSource;
import org.roofspring.site.RationingRule;
import org.roofspring.site.RawWater;
import org.roofspring.site.Reading;
import org.roofspring.site.Remark;
import org.roofspring.site.Roof;
import org.roofspring.site.SafetyMeasure;
import org.roofspring.site.Screen;
import org.roofspring.site.SharedScheme;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Stage;
import org.roofspring.site.Tank;
import org.roofspring.site.TankLink;
import org.roofspring.site.Tap;
import org.roofspring.site.Target;
import org.roofspring.site.TopUp;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.UnitPreference;
import org.roofspring.site.UpkeepTask;
import org.roofspring.site.Use;
import org.roofspring.site.UseCalendar;
import org.roofspring.site.WaterTest;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getSchemaVersion <em>Schema Version</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getLatitude <em>Latitude</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getAltitude <em>Altitude</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getWaterTemperatureMin <em>Water Temperature Min</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getWaterTemperatureUsual <em>Water Temperature Usual</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getWaterTemperatureMax <em>Water Temperature Max</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getCurrency <em>Currency</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getPreferredUnits <em>Preferred Units</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getAuthor <em>Author</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getClient <em>Client</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getCreated <em>Created</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getRain <em>Rain</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getTarget <em>Target</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getRoofs <em>Roofs</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getGutters <em>Gutters</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getDownpipes <em>Downpipes</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getScreens <em>Screens</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getDiverters <em>Diverters</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getTanks <em>Tanks</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getTankLinks <em>Tank Links</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getJunctions <em>Junctions</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getPipeRuns <em>Pipe Runs</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getPumps <em>Pumps</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getPressureVessels <em>Pressure Vessels</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getTaps <em>Taps</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getCalendars <em>Calendars</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getUses <em>Uses</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getRationing <em>Rationing</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getTopUps <em>Top Ups</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getRawWater <em>Raw Water</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getTrains <em>Trains</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getCosts <em>Costs</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getAlternatives <em>Alternatives</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getEconomy <em>Economy</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getStages <em>Stages</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getOptions <em>Options</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getUpkeep <em>Upkeep</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getSafetyPlan <em>Safety Plan</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getInspections <em>Inspections</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getReadings <em>Readings</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getWaterTests <em>Water Tests</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getIncidents <em>Incidents</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getScheme <em>Scheme</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getRemarks <em>Remarks</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SiteImpl#getExtensions <em>Extensions</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SiteImpl extends NamedElementImpl implements Site
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SiteImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return SitePackage.Literals.SITE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSchemaVersion()
	{
		return (Integer)eGet(SitePackage.Literals.SITE__SCHEMA_VERSION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSchemaVersion(int newSchemaVersion)
	{
		eSet(SitePackage.Literals.SITE__SCHEMA_VERSION, newSchemaVersion);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlace()
	{
		return (String)eGet(SitePackage.Literals.SITE__PLACE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(String newPlace)
	{
		eSet(SitePackage.Literals.SITE__PLACE, newPlace);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLatitude()
	{
		return (Quantity)eGet(SitePackage.Literals.SITE__LATITUDE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLatitude(Quantity newLatitude)
	{
		eSet(SitePackage.Literals.SITE__LATITUDE, newLatitude);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAltitude()
	{
		return (Quantity)eGet(SitePackage.Literals.SITE__ALTITUDE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAltitude(Quantity newAltitude)
	{
		eSet(SitePackage.Literals.SITE__ALTITUDE, newAltitude);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWaterTemperatureMin()
	{
		return (Quantity)eGet(SitePackage.Literals.SITE__WATER_TEMPERATURE_MIN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterTemperatureMin(Quantity newWaterTemperatureMin)
	{
		eSet(SitePackage.Literals.SITE__WATER_TEMPERATURE_MIN, newWaterTemperatureMin);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWaterTemperatureUsual()
	{
		return (Quantity)eGet(SitePackage.Literals.SITE__WATER_TEMPERATURE_USUAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterTemperatureUsual(Quantity newWaterTemperatureUsual)
	{
		eSet(SitePackage.Literals.SITE__WATER_TEMPERATURE_USUAL, newWaterTemperatureUsual);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWaterTemperatureMax()
	{
		return (Quantity)eGet(SitePackage.Literals.SITE__WATER_TEMPERATURE_MAX, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterTemperatureMax(Quantity newWaterTemperatureMax)
	{
		eSet(SitePackage.Literals.SITE__WATER_TEMPERATURE_MAX, newWaterTemperatureMax);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurrency()
	{
		return (String)eGet(SitePackage.Literals.SITE__CURRENCY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrency(String newCurrency)
	{
		eSet(SitePackage.Literals.SITE__CURRENCY, newCurrency);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnitPreference getPreferredUnits()
	{
		return (UnitPreference)eGet(SitePackage.Literals.SITE__PREFERRED_UNITS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPreferredUnits(UnitPreference newPreferredUnits)
	{
		eSet(SitePackage.Literals.SITE__PREFERRED_UNITS, newPreferredUnits);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAuthor()
	{
		return (String)eGet(SitePackage.Literals.SITE__AUTHOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAuthor(String newAuthor)
	{
		eSet(SitePackage.Literals.SITE__AUTHOR, newAuthor);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getClient()
	{
		return (String)eGet(SitePackage.Literals.SITE__CLIENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClient(String newClient)
	{
		eSet(SitePackage.Literals.SITE__CLIENT, newClient);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCreated()
	{
		return (LocalDate)eGet(SitePackage.Literals.SITE__CREATED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCreated(LocalDate newCreated)
	{
		eSet(SitePackage.Literals.SITE__CREATED, newCreated);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RainSource getRain()
	{
		return (RainSource)eGet(SitePackage.Literals.SITE__RAIN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRain(RainSource newRain)
	{
		eSet(SitePackage.Literals.SITE__RAIN, newRain);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Target getTarget()
	{
		return (Target)eGet(SitePackage.Literals.SITE__TARGET, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTarget(Target newTarget)
	{
		eSet(SitePackage.Literals.SITE__TARGET, newTarget);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Roof> getRoofs()
	{
		return (EList<Roof>)eGet(SitePackage.Literals.SITE__ROOFS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Gutter> getGutters()
	{
		return (EList<Gutter>)eGet(SitePackage.Literals.SITE__GUTTERS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Downpipe> getDownpipes()
	{
		return (EList<Downpipe>)eGet(SitePackage.Literals.SITE__DOWNPIPES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Screen> getScreens()
	{
		return (EList<Screen>)eGet(SitePackage.Literals.SITE__SCREENS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<FirstFlushDiverter> getDiverters()
	{
		return (EList<FirstFlushDiverter>)eGet(SitePackage.Literals.SITE__DIVERTERS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Tank> getTanks()
	{
		return (EList<Tank>)eGet(SitePackage.Literals.SITE__TANKS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<TankLink> getTankLinks()
	{
		return (EList<TankLink>)eGet(SitePackage.Literals.SITE__TANK_LINKS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Junction> getJunctions()
	{
		return (EList<Junction>)eGet(SitePackage.Literals.SITE__JUNCTIONS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<PipeRun> getPipeRuns()
	{
		return (EList<PipeRun>)eGet(SitePackage.Literals.SITE__PIPE_RUNS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Pump> getPumps()
	{
		return (EList<Pump>)eGet(SitePackage.Literals.SITE__PUMPS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<PressureVessel> getPressureVessels()
	{
		return (EList<PressureVessel>)eGet(SitePackage.Literals.SITE__PRESSURE_VESSELS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Tap> getTaps()
	{
		return (EList<Tap>)eGet(SitePackage.Literals.SITE__TAPS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<UseCalendar> getCalendars()
	{
		return (EList<UseCalendar>)eGet(SitePackage.Literals.SITE__CALENDARS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Use> getUses()
	{
		return (EList<Use>)eGet(SitePackage.Literals.SITE__USES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<RationingRule> getRationing()
	{
		return (EList<RationingRule>)eGet(SitePackage.Literals.SITE__RATIONING, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<TopUp> getTopUps()
	{
		return (EList<TopUp>)eGet(SitePackage.Literals.SITE__TOP_UPS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RawWater getRawWater()
	{
		return (RawWater)eGet(SitePackage.Literals.SITE__RAW_WATER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRawWater(RawWater newRawWater)
	{
		eSet(SitePackage.Literals.SITE__RAW_WATER, newRawWater);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<TreatmentTrain> getTrains()
	{
		return (EList<TreatmentTrain>)eGet(SitePackage.Literals.SITE__TRAINS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<CostItem> getCosts()
	{
		return (EList<CostItem>)eGet(SitePackage.Literals.SITE__COSTS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<AlternativeSupply> getAlternatives()
	{
		return (EList<AlternativeSupply>)eGet(SitePackage.Literals.SITE__ALTERNATIVES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Economy getEconomy()
	{
		return (Economy)eGet(SitePackage.Literals.SITE__ECONOMY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEconomy(Economy newEconomy)
	{
		eSet(SitePackage.Literals.SITE__ECONOMY, newEconomy);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Stage> getStages()
	{
		return (EList<Stage>)eGet(SitePackage.Literals.SITE__STAGES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Option> getOptions()
	{
		return (EList<Option>)eGet(SitePackage.Literals.SITE__OPTIONS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<UpkeepTask> getUpkeep()
	{
		return (EList<UpkeepTask>)eGet(SitePackage.Literals.SITE__UPKEEP, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<SafetyMeasure> getSafetyPlan()
	{
		return (EList<SafetyMeasure>)eGet(SitePackage.Literals.SITE__SAFETY_PLAN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Inspection> getInspections()
	{
		return (EList<Inspection>)eGet(SitePackage.Literals.SITE__INSPECTIONS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Reading> getReadings()
	{
		return (EList<Reading>)eGet(SitePackage.Literals.SITE__READINGS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<WaterTest> getWaterTests()
	{
		return (EList<WaterTest>)eGet(SitePackage.Literals.SITE__WATER_TESTS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Incident> getIncidents()
	{
		return (EList<Incident>)eGet(SitePackage.Literals.SITE__INCIDENTS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SharedScheme getScheme()
	{
		return (SharedScheme)eGet(SitePackage.Literals.SITE__SCHEME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScheme(SharedScheme newScheme)
	{
		eSet(SitePackage.Literals.SITE__SCHEME, newScheme);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Remark> getRemarks()
	{
		return (EList<Remark>)eGet(SitePackage.Literals.SITE__REMARKS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<ExtensionEntry> getExtensions()
	{
		return (EList<ExtensionEntry>)eGet(SitePackage.Literals.SITE__EXTENSIONS, true);
	}

} //SiteImpl

/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A whole rainwater system: what it gathers, stores, moves, treats and uses, and what is known and decided about it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Site#getSchemaVersion <em>Schema Version</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getPlace <em>Place</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getLatitude <em>Latitude</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getAltitude <em>Altitude</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getWaterTemperatureMin <em>Water Temperature Min</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getWaterTemperatureUsual <em>Water Temperature Usual</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getWaterTemperatureMax <em>Water Temperature Max</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getCurrency <em>Currency</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getPreferredUnits <em>Preferred Units</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getAuthor <em>Author</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getClient <em>Client</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getCreated <em>Created</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getRain <em>Rain</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getTarget <em>Target</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getRoofs <em>Roofs</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getGutters <em>Gutters</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getDownpipes <em>Downpipes</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getScreens <em>Screens</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getDiverters <em>Diverters</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getTanks <em>Tanks</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getTankLinks <em>Tank Links</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getJunctions <em>Junctions</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getPipeRuns <em>Pipe Runs</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getPumps <em>Pumps</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getPressureVessels <em>Pressure Vessels</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getTaps <em>Taps</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getCalendars <em>Calendars</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getUses <em>Uses</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getRationing <em>Rationing</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getTopUps <em>Top Ups</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getRawWater <em>Raw Water</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getTrains <em>Trains</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getCosts <em>Costs</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getAlternatives <em>Alternatives</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getEconomy <em>Economy</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getStages <em>Stages</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getOptions <em>Options</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getUpkeep <em>Upkeep</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getSafetyPlan <em>Safety Plan</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getInspections <em>Inspections</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getReadings <em>Readings</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getWaterTests <em>Water Tests</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getIncidents <em>Incidents</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getScheme <em>Scheme</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getRemarks <em>Remarks</em>}</li>
 *   <li>{@link org.roofspring.site.Site#getExtensions <em>Extensions</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getSite()
 * @model
 * @generated
 */
public interface Site extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Schema Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the schema of the file that was read; this program writes 1, and 0 means never saved. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Schema Version</em>' attribute.
	 * @see #setSchemaVersion(int)
	 * @see org.roofspring.site.SitePackage#getSite_SchemaVersion()
	 * @model annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	int getSchemaVersion();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getSchemaVersion <em>Schema Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Schema Version</em>' attribute.
	 * @see #getSchemaVersion()
	 * @generated
	 */
	void setSchemaVersion(int value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it is, in words.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see org.roofspring.site.SitePackage#getSite_Place()
	 * @model
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

	/**
	 * Returns the value of the '<em><b>Latitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Latitude, north positive; bears on the season names only. Usual unit deg. Range from -90 deg to 90 deg.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Latitude</em>' attribute.
	 * @see #setLatitude(Quantity)
	 * @see org.roofspring.site.SitePackage#getSite_Latitude()
	 * @model dataType="org.roofspring.site.Angle"
	 *        annotation="http://www.roofspring.org/value min='-90' max='90'"
	 * @generated
	 */
	Quantity getLatitude();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getLatitude <em>Latitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Latitude</em>' attribute.
	 * @see #getLatitude()
	 * @generated
	 */
	void setLatitude(Quantity value);

	/**
	 * Returns the value of the '<em><b>Altitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the site datum above sea level. Usual unit m. Range from -430 m to 5500 m. Default 0 m (sea level assumed; enter the real one, for it bears on suction, boiling and air pressure).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Altitude</em>' attribute.
	 * @see #setAltitude(Quantity)
	 * @see org.roofspring.site.SitePackage#getSite_Altitude()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='-430' max='5500' default='0 m' defaultSource='sea level assumed; enter the real one, for it bears on suction, boiling and air pressure'"
	 * @generated
	 */
	Quantity getAltitude();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getAltitude <em>Altitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Altitude</em>' attribute.
	 * @see #getAltitude()
	 * @generated
	 */
	void setAltitude(Quantity value);

	/**
	 * Returns the value of the '<em><b>Water Temperature Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Coldest water in a year. Usual unit degC. Range from 0 degC to 45 degC. Default 10 degC (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Water Temperature Min</em>' attribute.
	 * @see #setWaterTemperatureMin(Quantity)
	 * @see org.roofspring.site.SitePackage#getSite_WaterTemperatureMin()
	 * @model dataType="org.roofspring.site.Temperature"
	 *        annotation="http://www.roofspring.org/value min='0' max='45' default='10 degC' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getWaterTemperatureMin();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getWaterTemperatureMin <em>Water Temperature Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Temperature Min</em>' attribute.
	 * @see #getWaterTemperatureMin()
	 * @generated
	 */
	void setWaterTemperatureMin(Quantity value);

	/**
	 * Returns the value of the '<em><b>Water Temperature Usual</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Usual temperature of the water. Usual unit degC. Range from 0 degC to 45 degC. Default 20 degC (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Water Temperature Usual</em>' attribute.
	 * @see #setWaterTemperatureUsual(Quantity)
	 * @see org.roofspring.site.SitePackage#getSite_WaterTemperatureUsual()
	 * @model dataType="org.roofspring.site.Temperature"
	 *        annotation="http://www.roofspring.org/value min='0' max='45' default='20 degC' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getWaterTemperatureUsual();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getWaterTemperatureUsual <em>Water Temperature Usual</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Temperature Usual</em>' attribute.
	 * @see #getWaterTemperatureUsual()
	 * @generated
	 */
	void setWaterTemperatureUsual(Quantity value);

	/**
	 * Returns the value of the '<em><b>Water Temperature Max</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Warmest water in a year; suction is checked with it. Usual unit degC. Range from 0 degC to 60 degC. Default 30 degC (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Water Temperature Max</em>' attribute.
	 * @see #setWaterTemperatureMax(Quantity)
	 * @see org.roofspring.site.SitePackage#getSite_WaterTemperatureMax()
	 * @model dataType="org.roofspring.site.Temperature"
	 *        annotation="http://www.roofspring.org/value min='0' max='60' default='30 degC' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getWaterTemperatureMax();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getWaterTemperatureMax <em>Water Temperature Max</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Temperature Max</em>' attribute.
	 * @see #getWaterTemperatureMax()
	 * @generated
	 */
	void setWaterTemperatureMax(Quantity value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * The default value is <code>"cur"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Three-letter code of the currency of all amounts in this file. Default cur.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see org.roofspring.site.SitePackage#getSite_Currency()
	 * @model default="cur"
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

	/**
	 * Returns the value of the '<em><b>Preferred Units</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.UnitPreference}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Units that results are shown in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Preferred Units</em>' attribute.
	 * @see org.roofspring.site.UnitPreference
	 * @see #setPreferredUnits(UnitPreference)
	 * @see org.roofspring.site.SitePackage#getSite_PreferredUnits()
	 * @model
	 * @generated
	 */
	UnitPreference getPreferredUnits();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getPreferredUnits <em>Preferred Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Preferred Units</em>' attribute.
	 * @see org.roofspring.site.UnitPreference
	 * @see #getPreferredUnits()
	 * @generated
	 */
	void setPreferredUnits(UnitPreference value);

	/**
	 * Returns the value of the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who answers for this design.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Author</em>' attribute.
	 * @see #setAuthor(String)
	 * @see org.roofspring.site.SitePackage#getSite_Author()
	 * @model
	 * @generated
	 */
	String getAuthor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getAuthor <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Author</em>' attribute.
	 * @see #getAuthor()
	 * @generated
	 */
	void setAuthor(String value);

	/**
	 * Returns the value of the '<em><b>Client</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * For whom the system is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Client</em>' attribute.
	 * @see #setClient(String)
	 * @see org.roofspring.site.SitePackage#getSite_Client()
	 * @model
	 * @generated
	 */
	String getClient();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getClient <em>Client</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Client</em>' attribute.
	 * @see #getClient()
	 * @generated
	 */
	void setClient(String value);

	/**
	 * Returns the value of the '<em><b>Created</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day the design was begun.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Created</em>' attribute.
	 * @see #setCreated(LocalDate)
	 * @see org.roofspring.site.SitePackage#getSite_Created()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getCreated();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getCreated <em>Created</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Created</em>' attribute.
	 * @see #getCreated()
	 * @generated
	 */
	void setCreated(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Rain</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the rain record comes from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rain</em>' containment reference.
	 * @see #setRain(RainSource)
	 * @see org.roofspring.site.SitePackage#getSite_Rain()
	 * @model containment="true"
	 * @generated
	 */
	RainSource getRain();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getRain <em>Rain</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rain</em>' containment reference.
	 * @see #getRain()
	 * @generated
	 */
	void setRain(RainSource value);

	/**
	 * Returns the value of the '<em><b>Target</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the system must achieve, and the money there is for it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Target</em>' containment reference.
	 * @see #setTarget(Target)
	 * @see org.roofspring.site.SitePackage#getSite_Target()
	 * @model containment="true"
	 * @generated
	 */
	Target getTarget();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getTarget <em>Target</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Target</em>' containment reference.
	 * @see #getTarget()
	 * @generated
	 */
	void setTarget(Target value);

	/**
	 * Returns the value of the '<em><b>Roofs</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Roof}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Roofs that gather rain.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roofs</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Roofs()
	 * @model containment="true"
	 * @generated
	 */
	EList<Roof> getRoofs();

	/**
	 * Returns the value of the '<em><b>Gutters</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Gutter}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gutters.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gutters</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Gutters()
	 * @model containment="true"
	 * @generated
	 */
	EList<Gutter> getGutters();

	/**
	 * Returns the value of the '<em><b>Downpipes</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Downpipe}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Downpipes from gutters to the ground.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Downpipes</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Downpipes()
	 * @model containment="true"
	 * @generated
	 */
	EList<Downpipe> getDownpipes();

	/**
	 * Returns the value of the '<em><b>Screens</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Screen}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Screens that hold back leaves and insects on the way to a tank.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Screens</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Screens()
	 * @model containment="true"
	 * @generated
	 */
	EList<Screen> getScreens();

	/**
	 * Returns the value of the '<em><b>Diverters</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.FirstFlushDiverter}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Devices that throw away the first rain of a storm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diverters</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Diverters()
	 * @model containment="true"
	 * @generated
	 */
	EList<FirstFlushDiverter> getDiverters();

	/**
	 * Returns the value of the '<em><b>Tanks</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Tank}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tanks.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tanks</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Tanks()
	 * @model containment="true"
	 * @generated
	 */
	EList<Tank> getTanks();

	/**
	 * Returns the value of the '<em><b>Tank Links</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.TankLink}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How tanks share water.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tank Links</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_TankLinks()
	 * @model containment="true"
	 * @generated
	 */
	EList<TankLink> getTankLinks();

	/**
	 * Returns the value of the '<em><b>Junctions</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Junction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Places where runs of pipe meet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Junctions</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Junctions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Junction> getJunctions();

	/**
	 * Returns the value of the '<em><b>Pipe Runs</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.PipeRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Runs of pipe.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pipe Runs</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_PipeRuns()
	 * @model containment="true"
	 * @generated
	 */
	EList<PipeRun> getPipeRuns();

	/**
	 * Returns the value of the '<em><b>Pumps</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Pump}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pumps.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pumps</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Pumps()
	 * @model containment="true"
	 * @generated
	 */
	EList<Pump> getPumps();

	/**
	 * Returns the value of the '<em><b>Pressure Vessels</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.PressureVessel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure vessels.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pressure Vessels</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_PressureVessels()
	 * @model containment="true"
	 * @generated
	 */
	EList<PressureVessel> getPressureVessels();

	/**
	 * Returns the value of the '<em><b>Taps</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Tap}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Taps and other outlets.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Taps</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Taps()
	 * @model containment="true"
	 * @generated
	 */
	EList<Tap> getTaps();

	/**
	 * Returns the value of the '<em><b>Calendars</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.UseCalendar}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Calendars that uses follow.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calendars</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Calendars()
	 * @model containment="true"
	 * @generated
	 */
	EList<UseCalendar> getCalendars();

	/**
	 * Returns the value of the '<em><b>Uses</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Use}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What water is used for, by whom and how much.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Uses</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Uses()
	 * @model containment="true"
	 * @generated
	 */
	EList<Use> getUses();

	/**
	 * Returns the value of the '<em><b>Rationing</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.RationingRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rules by which use is cut when water is short.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rationing</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Rationing()
	 * @model containment="true"
	 * @generated
	 */
	EList<RationingRule> getRationing();

	/**
	 * Returns the value of the '<em><b>Top Ups</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.TopUp}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water that can be brought from outside.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Top Ups</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_TopUps()
	 * @model containment="true"
	 * @generated
	 */
	EList<TopUp> getTopUps();

	/**
	 * Returns the value of the '<em><b>Raw Water</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the stored water is like before any treatment.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Raw Water</em>' containment reference.
	 * @see #setRawWater(RawWater)
	 * @see org.roofspring.site.SitePackage#getSite_RawWater()
	 * @model containment="true"
	 * @generated
	 */
	RawWater getRawWater();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getRawWater <em>Raw Water</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Raw Water</em>' containment reference.
	 * @see #getRawWater()
	 * @generated
	 */
	void setRawWater(RawWater value);

	/**
	 * Returns the value of the '<em><b>Trains</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.TreatmentTrain}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Treatment trains.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Trains</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Trains()
	 * @model containment="true"
	 * @generated
	 */
	EList<TreatmentTrain> getTrains();

	/**
	 * Returns the value of the '<em><b>Costs</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.CostItem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What things cost.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Costs</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Costs()
	 * @model containment="true"
	 * @generated
	 */
	EList<CostItem> getCosts();

	/**
	 * Returns the value of the '<em><b>Alternatives</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.AlternativeSupply}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Other ways to get the same water, for comparison.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Alternatives</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Alternatives()
	 * @model containment="true"
	 * @generated
	 */
	EList<AlternativeSupply> getAlternatives();

	/**
	 * Returns the value of the '<em><b>Economy</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Money matters that hold for the whole site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Economy</em>' containment reference.
	 * @see #setEconomy(Economy)
	 * @see org.roofspring.site.SitePackage#getSite_Economy()
	 * @model containment="true"
	 * @generated
	 */
	Economy getEconomy();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getEconomy <em>Economy</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Economy</em>' containment reference.
	 * @see #getEconomy()
	 * @generated
	 */
	void setEconomy(Economy value);

	/**
	 * Returns the value of the '<em><b>Stages</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Stage}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Dated steps in which the system is built up.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stages</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Stages()
	 * @model containment="true"
	 * @generated
	 */
	EList<Stage> getStages();

	/**
	 * Returns the value of the '<em><b>Options</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Option}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sets of changes to weigh against the design as it stands.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Options</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Options()
	 * @model containment="true"
	 * @generated
	 */
	EList<Option> getOptions();

	/**
	 * Returns the value of the '<em><b>Upkeep</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.UpkeepTask}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Recurring work.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Upkeep</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Upkeep()
	 * @model containment="true"
	 * @generated
	 */
	EList<UpkeepTask> getUpkeep();

	/**
	 * Returns the value of the '<em><b>Safety Plan</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.SafetyMeasure}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water safety plan: hazards and what keeps them in check.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Safety Plan</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_SafetyPlan()
	 * @model containment="true"
	 * @generated
	 */
	EList<SafetyMeasure> getSafetyPlan();

	/**
	 * Returns the value of the '<em><b>Inspections</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Inspection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sanitary inspections that were made.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inspections</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Inspections()
	 * @model containment="true"
	 * @generated
	 */
	EList<Inspection> getInspections();

	/**
	 * Returns the value of the '<em><b>Readings</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Values that were read on the site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Readings</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Readings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getReadings();

	/**
	 * Returns the value of the '<em><b>Water Tests</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.WaterTest}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tests of the water.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Water Tests</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_WaterTests()
	 * @model containment="true"
	 * @generated
	 */
	EList<WaterTest> getWaterTests();

	/**
	 * Returns the value of the '<em><b>Incidents</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Incident}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Things that went wrong.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Incidents</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Incidents()
	 * @model containment="true"
	 * @generated
	 */
	EList<Incident> getIncidents();

	/**
	 * Returns the value of the '<em><b>Scheme</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How a system that several households share is run.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scheme</em>' containment reference.
	 * @see #setScheme(SharedScheme)
	 * @see org.roofspring.site.SitePackage#getSite_Scheme()
	 * @model containment="true"
	 * @generated
	 */
	SharedScheme getScheme();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Site#getScheme <em>Scheme</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scheme</em>' containment reference.
	 * @see #getScheme()
	 * @generated
	 */
	void setScheme(SharedScheme value);

	/**
	 * Returns the value of the '<em><b>Remarks</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Remark}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Remarks and sign-offs of reviewers.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Remarks</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Remarks()
	 * @model containment="true"
	 * @generated
	 */
	EList<Remark> getRemarks();

	/**
	 * Returns the value of the '<em><b>Extensions</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.ExtensionEntry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Data of plug-ins; kept even when the plug-in is absent.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Extensions</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSite_Extensions()
	 * @model containment="true"
	 * @generated
	 */
	EList<ExtensionEntry> getExtensions();

} // Site

/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rain Source</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Where the rain record comes from and how it is read, mended and changed.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.RainSource#getFile <em>File</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getFormat <em>Format</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDateColumn <em>Date Column</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDepthColumn <em>Depth Column</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDatePattern <em>Date Pattern</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDelimiter <em>Delimiter</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#isDecimalComma <em>Decimal Comma</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDepthUnit <em>Depth Unit</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getGapMethod <em>Gap Method</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getFirstDay <em>First Day</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getLastDay <em>Last Day</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getStation <em>Station</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getStationAltitude <em>Station Altitude</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDonorFile <em>Donor File</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDonorStation <em>Donor Station</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#isScaleToNormals <em>Scale To Normals</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getNormals <em>Normals</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#isSynthesize <em>Synthesize</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getSyntheticYears <em>Synthetic Years</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getSeed <em>Seed</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getStress <em>Stress</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getIntensities <em>Intensities</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getReturnPeriod <em>Return Period</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getPeakDuration <em>Peak Duration</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDayToShortRatio <em>Day To Short Ratio</em>}</li>
 *   <li>{@link org.roofspring.site.RainSource#getDayFactor <em>Day Factor</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getRainSource()
 * @model
 * @generated
 */
public interface RainSource extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * File of the record, as a path from the folder of the site file, with forward slashes, not leaving that folder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' attribute.
	 * @see #setFile(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_File()
	 * @model
	 * @generated
	 */
	String getFile();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getFile <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' attribute.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(String value);

	/**
	 * Returns the value of the '<em><b>Format</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.RainFormat}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the file is written.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format</em>' attribute.
	 * @see org.roofspring.site.RainFormat
	 * @see #setFormat(RainFormat)
	 * @see org.roofspring.site.SitePackage#getRainSource_Format()
	 * @model
	 * @generated
	 */
	RainFormat getFormat();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getFormat <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format</em>' attribute.
	 * @see org.roofspring.site.RainFormat
	 * @see #getFormat()
	 * @generated
	 */
	void setFormat(RainFormat value);

	/**
	 * Returns the value of the '<em><b>Date Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the date column of a CSV file; not given means found.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date Column</em>' attribute.
	 * @see #setDateColumn(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_DateColumn()
	 * @model
	 * @generated
	 */
	String getDateColumn();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDateColumn <em>Date Column</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date Column</em>' attribute.
	 * @see #getDateColumn()
	 * @generated
	 */
	void setDateColumn(String value);

	/**
	 * Returns the value of the '<em><b>Depth Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the depth column of a CSV file; not given means found.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth Column</em>' attribute.
	 * @see #setDepthColumn(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_DepthColumn()
	 * @model
	 * @generated
	 */
	String getDepthColumn();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDepthColumn <em>Depth Column</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth Column</em>' attribute.
	 * @see #getDepthColumn()
	 * @generated
	 */
	void setDepthColumn(String value);

	/**
	 * Returns the value of the '<em><b>Date Pattern</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pattern of the dates of a CSV file, such as dd/MM/yyyy; not given means found.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date Pattern</em>' attribute.
	 * @see #setDatePattern(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_DatePattern()
	 * @model
	 * @generated
	 */
	String getDatePattern();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDatePattern <em>Date Pattern</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date Pattern</em>' attribute.
	 * @see #getDatePattern()
	 * @generated
	 */
	void setDatePattern(String value);

	/**
	 * Returns the value of the '<em><b>Delimiter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Character between the columns of a CSV file; not given means found.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Delimiter</em>' attribute.
	 * @see #setDelimiter(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_Delimiter()
	 * @model
	 * @generated
	 */
	String getDelimiter();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDelimiter <em>Delimiter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Delimiter</em>' attribute.
	 * @see #getDelimiter()
	 * @generated
	 */
	void setDelimiter(String value);

	/**
	 * Returns the value of the '<em><b>Decimal Comma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether depths of a CSV file have a decimal comma.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Decimal Comma</em>' attribute.
	 * @see #setDecimalComma(boolean)
	 * @see org.roofspring.site.SitePackage#getRainSource_DecimalComma()
	 * @model
	 * @generated
	 */
	boolean isDecimalComma();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#isDecimalComma <em>Decimal Comma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Decimal Comma</em>' attribute.
	 * @see #isDecimalComma()
	 * @generated
	 */
	void setDecimalComma(boolean value);

	/**
	 * Returns the value of the '<em><b>Depth Unit</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.DepthUnit}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unit of the depths.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth Unit</em>' attribute.
	 * @see org.roofspring.site.DepthUnit
	 * @see #setDepthUnit(DepthUnit)
	 * @see org.roofspring.site.SitePackage#getRainSource_DepthUnit()
	 * @model
	 * @generated
	 */
	DepthUnit getDepthUnit();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDepthUnit <em>Depth Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth Unit</em>' attribute.
	 * @see org.roofspring.site.DepthUnit
	 * @see #getDepthUnit()
	 * @generated
	 */
	void setDepthUnit(DepthUnit value);

	/**
	 * Returns the value of the '<em><b>Gap Method</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.GapMethod}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is done with missing days.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap Method</em>' attribute.
	 * @see org.roofspring.site.GapMethod
	 * @see #setGapMethod(GapMethod)
	 * @see org.roofspring.site.SitePackage#getRainSource_GapMethod()
	 * @model
	 * @generated
	 */
	GapMethod getGapMethod();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getGapMethod <em>Gap Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap Method</em>' attribute.
	 * @see org.roofspring.site.GapMethod
	 * @see #getGapMethod()
	 * @generated
	 */
	void setGapMethod(GapMethod value);

	/**
	 * Returns the value of the '<em><b>First Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First day of the record to use; not given means all.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>First Day</em>' attribute.
	 * @see #setFirstDay(LocalDate)
	 * @see org.roofspring.site.SitePackage#getRainSource_FirstDay()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getFirstDay();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getFirstDay <em>First Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Day</em>' attribute.
	 * @see #getFirstDay()
	 * @generated
	 */
	void setFirstDay(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Last Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Last day of the record to use; not given means all.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Last Day</em>' attribute.
	 * @see #setLastDay(LocalDate)
	 * @see org.roofspring.site.SitePackage#getRainSource_LastDay()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getLastDay();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getLastDay <em>Last Day</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Day</em>' attribute.
	 * @see #getLastDay()
	 * @generated
	 */
	void setLastDay(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Station</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the station, who keeps it, and terms of use.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Station</em>' attribute.
	 * @see #setStation(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_Station()
	 * @model
	 * @generated
	 */
	String getStation();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getStation <em>Station</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Station</em>' attribute.
	 * @see #getStation()
	 * @generated
	 */
	void setStation(String value);

	/**
	 * Returns the value of the '<em><b>Station Altitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the station above sea level. Usual unit m. Range from -430 m to 5500 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Station Altitude</em>' attribute.
	 * @see #setStationAltitude(Quantity)
	 * @see org.roofspring.site.SitePackage#getRainSource_StationAltitude()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='-430' max='5500'"
	 * @generated
	 */
	Quantity getStationAltitude();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getStationAltitude <em>Station Altitude</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Station Altitude</em>' attribute.
	 * @see #getStationAltitude()
	 * @generated
	 */
	void setStationAltitude(Quantity value);

	/**
	 * Returns the value of the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance of the station from the site. Usual unit m. Range from 0 m to 20000 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distance</em>' attribute.
	 * @see #setDistance(Quantity)
	 * @see org.roofspring.site.SitePackage#getRainSource_Distance()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='20000000'"
	 * @generated
	 */
	Quantity getDistance();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDistance <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance</em>' attribute.
	 * @see #getDistance()
	 * @generated
	 */
	void setDistance(Quantity value);

	/**
	 * Returns the value of the '<em><b>Donor File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * File of another record that fills gaps or stands in for a missing one; path as for file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Donor File</em>' attribute.
	 * @see #setDonorFile(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_DonorFile()
	 * @model
	 * @generated
	 */
	String getDonorFile();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDonorFile <em>Donor File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Donor File</em>' attribute.
	 * @see #getDonorFile()
	 * @generated
	 */
	void setDonorFile(String value);

	/**
	 * Returns the value of the '<em><b>Donor Station</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the donor station and terms of use.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Donor Station</em>' attribute.
	 * @see #setDonorStation(String)
	 * @see org.roofspring.site.SitePackage#getRainSource_DonorStation()
	 * @model
	 * @generated
	 */
	String getDonorStation();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDonorStation <em>Donor Station</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Donor Station</em>' attribute.
	 * @see #getDonorStation()
	 * @generated
	 */
	void setDonorStation(String value);

	/**
	 * Returns the value of the '<em><b>Scale To Normals</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the record is scaled month by month to the normals below.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scale To Normals</em>' attribute.
	 * @see #setScaleToNormals(boolean)
	 * @see org.roofspring.site.SitePackage#getRainSource_ScaleToNormals()
	 * @model
	 * @generated
	 */
	boolean isScaleToNormals();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#isScaleToNormals <em>Scale To Normals</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale To Normals</em>' attribute.
	 * @see #isScaleToNormals()
	 * @generated
	 */
	void setScaleToNormals(boolean value);

	/**
	 * Returns the value of the '<em><b>Normals</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.MonthlyNormal}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Normals of this place by month.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Normals</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getRainSource_Normals()
	 * @model containment="true"
	 * @generated
	 */
	EList<MonthlyNormal> getNormals();

	/**
	 * Returns the value of the '<em><b>Synthesize</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether synthetic rain fitted to the record gives a second answer beside it. Without a record, rain invented from the normals drives the calculations in any case.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Synthesize</em>' attribute.
	 * @see #setSynthesize(boolean)
	 * @see org.roofspring.site.SitePackage#getRainSource_Synthesize()
	 * @model
	 * @generated
	 */
	boolean isSynthesize();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#isSynthesize <em>Synthesize</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Synthesize</em>' attribute.
	 * @see #isSynthesize()
	 * @generated
	 */
	void setSynthesize(boolean value);

	/**
	 * Returns the value of the '<em><b>Synthetic Years</b></em>' attribute.
	 * The default value is <code>"100"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Years of the synthetic record. Range from 1 to 1000. Default 100.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Synthetic Years</em>' attribute.
	 * @see #setSyntheticYears(int)
	 * @see org.roofspring.site.SitePackage#getRainSource_SyntheticYears()
	 * @model default="100"
	 *        annotation="http://www.roofspring.org/value min='1' max='1000'"
	 * @generated
	 */
	int getSyntheticYears();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getSyntheticYears <em>Synthetic Years</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Synthetic Years</em>' attribute.
	 * @see #getSyntheticYears()
	 * @generated
	 */
	void setSyntheticYears(int value);

	/**
	 * Returns the value of the '<em><b>Seed</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Seed of the random numbers, so that the same site gives the same record. Default 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Seed</em>' attribute.
	 * @see #setSeed(long)
	 * @see org.roofspring.site.SitePackage#getRainSource_Seed()
	 * @model default="1"
	 * @generated
	 */
	long getSeed();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getSeed <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Seed</em>' attribute.
	 * @see #getSeed()
	 * @generated
	 */
	void setSeed(long value);

	/**
	 * Returns the value of the '<em><b>Stress</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Change of climate to test the design against.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stress</em>' containment reference.
	 * @see #setStress(ClimateStress)
	 * @see org.roofspring.site.SitePackage#getRainSource_Stress()
	 * @model containment="true"
	 * @generated
	 */
	ClimateStress getStress();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getStress <em>Stress</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stress</em>' containment reference.
	 * @see #getStress()
	 * @generated
	 */
	void setStress(ClimateStress value);

	/**
	 * Returns the value of the '<em><b>Intensities</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.IntensityPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Design intensities that were entered; without them they are derived from the record.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Intensities</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getRainSource_Intensities()
	 * @model containment="true"
	 * @generated
	 */
	EList<IntensityPoint> getIntensities();

	/**
	 * Returns the value of the '<em><b>Return Period</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Return period of the storm that gutters are sized for. Usual unit yr. Range above 1 yr to 1000 yr. Default 5 yr (common practice for eaves gutters, no source; local code rules).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Return Period</em>' attribute.
	 * @see #setReturnPeriod(Quantity)
	 * @see org.roofspring.site.SitePackage#getRainSource_ReturnPeriod()
	 * @model dataType="org.roofspring.site.Years"
	 *        annotation="http://www.roofspring.org/value above='31556952' max='31556952000' default='5 yr' defaultSource='common practice for eaves gutters, no source; local code rules'"
	 * @generated
	 */
	Quantity getReturnPeriod();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getReturnPeriod <em>Return Period</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Return Period</em>' attribute.
	 * @see #getReturnPeriod()
	 * @generated
	 */
	void setReturnPeriod(Quantity value);

	/**
	 * Returns the value of the '<em><b>Peak Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Duration of the storm that gutters are sized for. Usual unit min. Range from 1 min to 1440 min. Default 5 min (common practice for roofs, no source; local code rules).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Peak Duration</em>' attribute.
	 * @see #setPeakDuration(Quantity)
	 * @see org.roofspring.site.SitePackage#getRainSource_PeakDuration()
	 * @model dataType="org.roofspring.site.Minutes"
	 *        annotation="http://www.roofspring.org/value min='60' max='86400' default='5 min' defaultSource='common practice for roofs, no source; local code rules'"
	 * @generated
	 */
	Quantity getPeakDuration();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getPeakDuration <em>Peak Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Peak Duration</em>' attribute.
	 * @see #getPeakDuration()
	 * @generated
	 */
	void setPeakDuration(Quantity value);

	/**
	 * Returns the value of the '<em><b>Day To Short Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of a storm of the peak duration as a share of the depth of the day; not given means the calculation's stated default. Range above 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Day To Short Ratio</em>' attribute.
	 * @see #setDayToShortRatio(Quantity)
	 * @see org.roofspring.site.SitePackage#getRainSource_DayToShortRatio()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getDayToShortRatio();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDayToShortRatio <em>Day To Short Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Day To Short Ratio</em>' attribute.
	 * @see #getDayToShortRatio()
	 * @generated
	 */
	void setDayToShortRatio(Quantity value);

	/**
	 * Returns the value of the '<em><b>Day Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of the wettest 24 hours over that of a day read at a fixed hour. Range from 1 to 2. Default 1.13 (from memory, verify against D. M. Hershfield and W. T. Wilson 1958, in WMO-No. 168, Guide to Hydrological Practices).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Day Factor</em>' attribute.
	 * @see #setDayFactor(Quantity)
	 * @see org.roofspring.site.SitePackage#getRainSource_DayFactor()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='1' max='2' default='1.13' defaultSource='from memory, verify against D. M. Hershfield and W. T. Wilson 1958, in WMO-No. 168, Guide to Hydrological Practices'"
	 * @generated
	 */
	Quantity getDayFactor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RainSource#getDayFactor <em>Day Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Day Factor</em>' attribute.
	 * @see #getDayFactor()
	 * @generated
	 */
	void setDayFactor(Quantity value);

} // RainSource

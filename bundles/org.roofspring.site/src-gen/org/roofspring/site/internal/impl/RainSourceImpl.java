/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.ClimateStress;
import org.roofspring.site.DepthUnit;
import org.roofspring.site.GapMethod;
import org.roofspring.site.IntensityPoint;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.RainFormat;
import org.roofspring.site.RainSource;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Rain Source</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getFile <em>File</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getFormat <em>Format</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDateColumn <em>Date Column</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDepthColumn <em>Depth Column</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDatePattern <em>Date Pattern</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDelimiter <em>Delimiter</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#isDecimalComma <em>Decimal Comma</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDepthUnit <em>Depth Unit</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getGapMethod <em>Gap Method</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getFirstDay <em>First Day</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getLastDay <em>Last Day</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getStation <em>Station</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getStationAltitude <em>Station Altitude</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDonorFile <em>Donor File</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDonorStation <em>Donor Station</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#isScaleToNormals <em>Scale To Normals</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getNormals <em>Normals</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#isSynthesize <em>Synthesize</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getSyntheticYears <em>Synthetic Years</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getSeed <em>Seed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getStress <em>Stress</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getIntensities <em>Intensities</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getReturnPeriod <em>Return Period</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getPeakDuration <em>Peak Duration</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDayToShortRatio <em>Day To Short Ratio</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RainSourceImpl#getDayFactor <em>Day Factor</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RainSourceImpl extends NamedElementImpl implements RainSource
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RainSourceImpl()
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
		return SitePackage.Literals.RAIN_SOURCE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFile()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__FILE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFile(String newFile)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__FILE, newFile);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RainFormat getFormat()
	{
		return (RainFormat)eGet(SitePackage.Literals.RAIN_SOURCE__FORMAT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormat(RainFormat newFormat)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__FORMAT, newFormat);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDateColumn()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__DATE_COLUMN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDateColumn(String newDateColumn)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DATE_COLUMN, newDateColumn);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDepthColumn()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__DEPTH_COLUMN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepthColumn(String newDepthColumn)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DEPTH_COLUMN, newDepthColumn);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDatePattern()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__DATE_PATTERN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDatePattern(String newDatePattern)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DATE_PATTERN, newDatePattern);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDelimiter()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__DELIMITER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDelimiter(String newDelimiter)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DELIMITER, newDelimiter);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isDecimalComma()
	{
		return (Boolean)eGet(SitePackage.Literals.RAIN_SOURCE__DECIMAL_COMMA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDecimalComma(boolean newDecimalComma)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DECIMAL_COMMA, newDecimalComma);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DepthUnit getDepthUnit()
	{
		return (DepthUnit)eGet(SitePackage.Literals.RAIN_SOURCE__DEPTH_UNIT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepthUnit(DepthUnit newDepthUnit)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DEPTH_UNIT, newDepthUnit);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GapMethod getGapMethod()
	{
		return (GapMethod)eGet(SitePackage.Literals.RAIN_SOURCE__GAP_METHOD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGapMethod(GapMethod newGapMethod)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__GAP_METHOD, newGapMethod);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getFirstDay()
	{
		return (LocalDate)eGet(SitePackage.Literals.RAIN_SOURCE__FIRST_DAY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstDay(LocalDate newFirstDay)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__FIRST_DAY, newFirstDay);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastDay()
	{
		return (LocalDate)eGet(SitePackage.Literals.RAIN_SOURCE__LAST_DAY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastDay(LocalDate newLastDay)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__LAST_DAY, newLastDay);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStation()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__STATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStation(String newStation)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__STATION, newStation);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStationAltitude()
	{
		return (Quantity)eGet(SitePackage.Literals.RAIN_SOURCE__STATION_ALTITUDE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStationAltitude(Quantity newStationAltitude)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__STATION_ALTITUDE, newStationAltitude);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDistance()
	{
		return (Quantity)eGet(SitePackage.Literals.RAIN_SOURCE__DISTANCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistance(Quantity newDistance)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DISTANCE, newDistance);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDonorFile()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__DONOR_FILE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDonorFile(String newDonorFile)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DONOR_FILE, newDonorFile);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDonorStation()
	{
		return (String)eGet(SitePackage.Literals.RAIN_SOURCE__DONOR_STATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDonorStation(String newDonorStation)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DONOR_STATION, newDonorStation);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isScaleToNormals()
	{
		return (Boolean)eGet(SitePackage.Literals.RAIN_SOURCE__SCALE_TO_NORMALS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScaleToNormals(boolean newScaleToNormals)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__SCALE_TO_NORMALS, newScaleToNormals);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<MonthlyNormal> getNormals()
	{
		return (EList<MonthlyNormal>)eGet(SitePackage.Literals.RAIN_SOURCE__NORMALS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSynthesize()
	{
		return (Boolean)eGet(SitePackage.Literals.RAIN_SOURCE__SYNTHESIZE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSynthesize(boolean newSynthesize)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__SYNTHESIZE, newSynthesize);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSyntheticYears()
	{
		return (Integer)eGet(SitePackage.Literals.RAIN_SOURCE__SYNTHETIC_YEARS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSyntheticYears(int newSyntheticYears)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__SYNTHETIC_YEARS, newSyntheticYears);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public long getSeed()
	{
		return (Long)eGet(SitePackage.Literals.RAIN_SOURCE__SEED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeed(long newSeed)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__SEED, newSeed);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ClimateStress getStress()
	{
		return (ClimateStress)eGet(SitePackage.Literals.RAIN_SOURCE__STRESS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStress(ClimateStress newStress)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__STRESS, newStress);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<IntensityPoint> getIntensities()
	{
		return (EList<IntensityPoint>)eGet(SitePackage.Literals.RAIN_SOURCE__INTENSITIES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReturnPeriod()
	{
		return (Quantity)eGet(SitePackage.Literals.RAIN_SOURCE__RETURN_PERIOD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReturnPeriod(Quantity newReturnPeriod)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__RETURN_PERIOD, newReturnPeriod);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPeakDuration()
	{
		return (Quantity)eGet(SitePackage.Literals.RAIN_SOURCE__PEAK_DURATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPeakDuration(Quantity newPeakDuration)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__PEAK_DURATION, newPeakDuration);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDayToShortRatio()
	{
		return (Quantity)eGet(SitePackage.Literals.RAIN_SOURCE__DAY_TO_SHORT_RATIO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDayToShortRatio(Quantity newDayToShortRatio)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DAY_TO_SHORT_RATIO, newDayToShortRatio);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDayFactor()
	{
		return (Quantity)eGet(SitePackage.Literals.RAIN_SOURCE__DAY_FACTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDayFactor(Quantity newDayFactor)
	{
		eSet(SitePackage.Literals.RAIN_SOURCE__DAY_FACTOR, newDayFactor);
	}

} //RainSourceImpl

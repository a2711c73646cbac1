/**
 */
package org.roofspring.site;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each operation of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The model of a rainwater site: everything that is known and decided about it. Results are not part of it.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SiteFactory
 * @model kind="package"
 *        annotation="http://www.eclipse.org/emf/2002/Ecore conversionDelegates='http://www.roofspring.org/quantity http://www.roofspring.org/time'"
 * @generated
 */
public interface SitePackage extends EPackage
{
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "site";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "http://www.roofspring.org/site/1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "site";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	SitePackage eINSTANCE = org.roofspring.site.internal.impl.SitePackageImpl.init();

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RowImpl <em>Row</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RowImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRow()
	 * @generated
	 */
	int ROW = 0;

	/**
	 * The number of structural features of the '<em>Row</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROW_FEATURE_COUNT = 0;

	/**
	 * The number of operations of the '<em>Row</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROW_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ElementImpl <em>Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ElementImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getElement()
	 * @generated
	 */
	int ELEMENT = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__ID = 0;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__NOTE = 1;

	/**
	 * The number of structural features of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT_FEATURE_COUNT = 2;

	/**
	 * The number of operations of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.NamedElementImpl <em>Named Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.NamedElementImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getNamedElement()
	 * @generated
	 */
	int NAMED_ELEMENT = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_ELEMENT__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_ELEMENT__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_ELEMENT__NAME = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Named Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_ELEMENT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Named Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_ELEMENT_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ComponentImpl <em>Component</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ComponentImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getComponent()
	 * @generated
	 */
	int COMPONENT = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__IN_USE = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__INSTALLED = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__DRAWING_PLACE = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Component</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Component</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ReceiverImpl <em>Receiver</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ReceiverImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getReceiver()
	 * @generated
	 */
	int RECEIVER = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The number of structural features of the '<em>Receiver</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The number of operations of the '<em>Receiver</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECEIVER_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ConduitImpl <em>Conduit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ConduitImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getConduit()
	 * @generated
	 */
	int CONDUIT = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__ID = RECEIVER__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__NOTE = RECEIVER__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__NAME = RECEIVER__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__IN_USE = RECEIVER__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__INSTALLED = RECEIVER__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__DRAWING_PLACE = RECEIVER__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Drains To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT__DRAINS_TO = RECEIVER_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Conduit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT_FEATURE_COUNT = RECEIVER_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Conduit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDUIT_OPERATION_COUNT = RECEIVER_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PipeNodeImpl <em>Pipe Node</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PipeNodeImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPipeNode()
	 * @generated
	 */
	int PIPE_NODE = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The number of structural features of the '<em>Pipe Node</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The number of operations of the '<em>Pipe Node</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_NODE_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.SiteImpl <em>Site</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.SiteImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSite()
	 * @generated
	 */
	int SITE = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Schema Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__SCHEMA_VERSION = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__PLACE = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Latitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__LATITUDE = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Altitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ALTITUDE = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Water Temperature Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__WATER_TEMPERATURE_MIN = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Water Temperature Usual</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__WATER_TEMPERATURE_USUAL = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Water Temperature Max</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__WATER_TEMPERATURE_MAX = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__CURRENCY = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Preferred Units</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__PREFERRED_UNITS = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__AUTHOR = NAMED_ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Client</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__CLIENT = NAMED_ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Created</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__CREATED = NAMED_ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Rain</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__RAIN = NAMED_ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Target</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TARGET = NAMED_ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Roofs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ROOFS = NAMED_ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Gutters</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__GUTTERS = NAMED_ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Downpipes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__DOWNPIPES = NAMED_ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Screens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__SCREENS = NAMED_ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Diverters</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__DIVERTERS = NAMED_ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Tanks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TANKS = NAMED_ELEMENT_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Tank Links</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TANK_LINKS = NAMED_ELEMENT_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Junctions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__JUNCTIONS = NAMED_ELEMENT_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Pipe Runs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__PIPE_RUNS = NAMED_ELEMENT_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Pumps</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__PUMPS = NAMED_ELEMENT_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Pressure Vessels</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__PRESSURE_VESSELS = NAMED_ELEMENT_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Taps</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TAPS = NAMED_ELEMENT_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Calendars</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__CALENDARS = NAMED_ELEMENT_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Uses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__USES = NAMED_ELEMENT_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Rationing</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__RATIONING = NAMED_ELEMENT_FEATURE_COUNT + 28;

	/**
	 * The feature id for the '<em><b>Top Ups</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TOP_UPS = NAMED_ELEMENT_FEATURE_COUNT + 29;

	/**
	 * The feature id for the '<em><b>Raw Water</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__RAW_WATER = NAMED_ELEMENT_FEATURE_COUNT + 30;

	/**
	 * The feature id for the '<em><b>Trains</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__TRAINS = NAMED_ELEMENT_FEATURE_COUNT + 31;

	/**
	 * The feature id for the '<em><b>Costs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__COSTS = NAMED_ELEMENT_FEATURE_COUNT + 32;

	/**
	 * The feature id for the '<em><b>Alternatives</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ALTERNATIVES = NAMED_ELEMENT_FEATURE_COUNT + 33;

	/**
	 * The feature id for the '<em><b>Economy</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ECONOMY = NAMED_ELEMENT_FEATURE_COUNT + 34;

	/**
	 * The feature id for the '<em><b>Stages</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__STAGES = NAMED_ELEMENT_FEATURE_COUNT + 35;

	/**
	 * The feature id for the '<em><b>Options</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__OPTIONS = NAMED_ELEMENT_FEATURE_COUNT + 36;

	/**
	 * The feature id for the '<em><b>Upkeep</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__UPKEEP = NAMED_ELEMENT_FEATURE_COUNT + 37;

	/**
	 * The feature id for the '<em><b>Safety Plan</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__SAFETY_PLAN = NAMED_ELEMENT_FEATURE_COUNT + 38;

	/**
	 * The feature id for the '<em><b>Inspections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__INSPECTIONS = NAMED_ELEMENT_FEATURE_COUNT + 39;

	/**
	 * The feature id for the '<em><b>Readings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__READINGS = NAMED_ELEMENT_FEATURE_COUNT + 40;

	/**
	 * The feature id for the '<em><b>Water Tests</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__WATER_TESTS = NAMED_ELEMENT_FEATURE_COUNT + 41;

	/**
	 * The feature id for the '<em><b>Incidents</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__INCIDENTS = NAMED_ELEMENT_FEATURE_COUNT + 42;

	/**
	 * The feature id for the '<em><b>Scheme</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__SCHEME = NAMED_ELEMENT_FEATURE_COUNT + 43;

	/**
	 * The feature id for the '<em><b>Remarks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__REMARKS = NAMED_ELEMENT_FEATURE_COUNT + 44;

	/**
	 * The feature id for the '<em><b>Extensions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__EXTENSIONS = NAMED_ELEMENT_FEATURE_COUNT + 45;

	/**
	 * The number of structural features of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 46;

	/**
	 * The number of operations of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TargetImpl <em>Target</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TargetImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTarget()
	 * @generated
	 */
	int TARGET = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Time Reliability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__TIME_RELIABILITY = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Volumetric Reliability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__VOLUMETRIC_RELIABILITY = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Longest Shortage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__LONGEST_SHORTAGE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reserve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__RESERVE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Pump Outage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__PUMP_OUTAGE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__CONFIDENCE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Budget</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__BUDGET = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Infection Target</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__INFECTION_TARGET = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Burden Target</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET__BURDEN_TARGET = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Target</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Target</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TARGET_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RainSourceImpl <em>Rain Source</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RainSourceImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRainSource()
	 * @generated
	 */
	int RAIN_SOURCE = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__FILE = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__FORMAT = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Date Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DATE_COLUMN = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Depth Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DEPTH_COLUMN = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date Pattern</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DATE_PATTERN = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Delimiter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DELIMITER = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Decimal Comma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DECIMAL_COMMA = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Depth Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DEPTH_UNIT = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Gap Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__GAP_METHOD = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>First Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__FIRST_DAY = NAMED_ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Last Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__LAST_DAY = NAMED_ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Station</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__STATION = NAMED_ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Station Altitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__STATION_ALTITUDE = NAMED_ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DISTANCE = NAMED_ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Donor File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DONOR_FILE = NAMED_ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Donor Station</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DONOR_STATION = NAMED_ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Scale To Normals</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__SCALE_TO_NORMALS = NAMED_ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Normals</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__NORMALS = NAMED_ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Synthesize</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__SYNTHESIZE = NAMED_ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Synthetic Years</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__SYNTHETIC_YEARS = NAMED_ELEMENT_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__SEED = NAMED_ELEMENT_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Stress</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__STRESS = NAMED_ELEMENT_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Intensities</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__INTENSITIES = NAMED_ELEMENT_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Return Period</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__RETURN_PERIOD = NAMED_ELEMENT_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Peak Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__PEAK_DURATION = NAMED_ELEMENT_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Day To Short Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DAY_TO_SHORT_RATIO = NAMED_ELEMENT_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Day Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE__DAY_FACTOR = NAMED_ELEMENT_FEATURE_COUNT + 26;

	/**
	 * The number of structural features of the '<em>Rain Source</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 27;

	/**
	 * The number of operations of the '<em>Rain Source</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAIN_SOURCE_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.MonthlyNormalImpl <em>Monthly Normal</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.MonthlyNormalImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMonthlyNormal()
	 * @generated
	 */
	int MONTHLY_NORMAL = 10;

	/**
	 * The feature id for the '<em><b>Month</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MONTHLY_NORMAL__MONTH = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MONTHLY_NORMAL__DEPTH = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Wet Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MONTHLY_NORMAL__WET_DAYS = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Evaporation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MONTHLY_NORMAL__EVAPORATION = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Monthly Normal</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MONTHLY_NORMAL_FEATURE_COUNT = ROW_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Monthly Normal</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MONTHLY_NORMAL_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ClimateStressImpl <em>Climate Stress</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ClimateStressImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getClimateStress()
	 * @generated
	 */
	int CLIMATE_STRESS = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Depth Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS__DEPTH_FACTOR = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Dry Season Longer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS__DRY_SEASON_LONGER = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Seasons</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS__SEASONS = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Climate Stress</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Climate Stress</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLIMATE_STRESS_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.SeasonFactorImpl <em>Season Factor</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.SeasonFactorImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSeasonFactor()
	 * @generated
	 */
	int SEASON_FACTOR = 12;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEASON_FACTOR__FROM = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEASON_FACTOR__TO = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEASON_FACTOR__FACTOR = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Season Factor</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEASON_FACTOR_FEATURE_COUNT = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Season Factor</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SEASON_FACTOR_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.IntensityPointImpl <em>Intensity Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.IntensityPointImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIntensityPoint()
	 * @generated
	 */
	int INTENSITY_POINT = 13;

	/**
	 * The feature id for the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INTENSITY_POINT__DURATION = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Return Period</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INTENSITY_POINT__RETURN_PERIOD = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Intensity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INTENSITY_POINT__INTENSITY = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Intensity Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INTENSITY_POINT_FEATURE_COUNT = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Intensity Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INTENSITY_POINT_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RoofImpl <em>Roof</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RoofImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRoof()
	 * @generated
	 */
	int ROOF = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Plan Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__PLAN_AREA = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Pitch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__PITCH = COMPONENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Eaves Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__EAVES_LENGTH = COMPONENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Slope Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__SLOPE_HEIGHT = COMPONENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Eaves Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__EAVES_LEVEL = COMPONENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__MATERIAL = COMPONENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Runoff Coefficient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__RUNOFF_COEFFICIENT = COMPONENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Runoff Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__RUNOFF_BASIS = COMPONENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Initial Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__INITIAL_LOSS = COMPONENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Collection Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__COLLECTION_EFFICIENCY = COMPONENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Peak Runoff</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__PEAK_RUNOFF = COMPONENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Hazards</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__HAZARDS = COMPONENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__AGE = COMPONENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Drains</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF__DRAINS = COMPONENT_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Roof</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 14;

	/**
	 * The number of operations of the '<em>Roof</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RoofDrainImpl <em>Roof Drain</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RoofDrainImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRoofDrain()
	 * @generated
	 */
	int ROOF_DRAIN = 15;

	/**
	 * The feature id for the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF_DRAIN__TO = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF_DRAIN__SHARE = ROW_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Roof Drain</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF_DRAIN_FEATURE_COUNT = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Roof Drain</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROOF_DRAIN_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.GutterImpl <em>Gutter</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.GutterImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGutter()
	 * @generated
	 */
	int GUTTER = 16;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__ID = RECEIVER__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__NOTE = RECEIVER__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__NAME = RECEIVER__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__IN_USE = RECEIVER__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__INSTALLED = RECEIVER__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__DRAWING_PLACE = RECEIVER__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Profile</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__PROFILE = RECEIVER_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__WIDTH = RECEIVER_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sole Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__SOLE_WIDTH = RECEIVER_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__DEPTH = RECEIVER_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Freeboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__FREEBOARD = RECEIVER_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__LENGTH = RECEIVER_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Slope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__SLOPE = RECEIVER_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Roughness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__ROUGHNESS = RECEIVER_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__LEVEL = RECEIVER_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Bends</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__BENDS = RECEIVER_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Leaf Guard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__LEAF_GUARD = RECEIVER_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Last Cleaned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__LAST_CLEANED = RECEIVER_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Outlets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER__OUTLETS = RECEIVER_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Gutter</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_FEATURE_COUNT = RECEIVER_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Gutter</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OPERATION_COUNT = RECEIVER_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.GutterOutletImpl <em>Gutter Outlet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.GutterOutletImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGutterOutlet()
	 * @generated
	 */
	int GUTTER_OUTLET = 17;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__POSITION = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Shape</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__SHAPE = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__DIAMETER = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Strainer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__STRAINER = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET__TO = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Gutter Outlet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Gutter Outlet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int GUTTER_OUTLET_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.DownpipeImpl <em>Downpipe</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.DownpipeImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDownpipe()
	 * @generated
	 */
	int DOWNPIPE = 18;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__ID = CONDUIT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__NOTE = CONDUIT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__NAME = CONDUIT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__IN_USE = CONDUIT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__INSTALLED = CONDUIT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__DRAWING_PLACE = CONDUIT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Drains To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__DRAINS_TO = CONDUIT__DRAINS_TO;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__BORE = CONDUIT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__LENGTH = CONDUIT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Fill Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__FILL_SHARE = CONDUIT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Wet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE__WET = CONDUIT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Downpipe</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE_FEATURE_COUNT = CONDUIT_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Downpipe</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOWNPIPE_OPERATION_COUNT = CONDUIT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ScreenImpl <em>Screen</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ScreenImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getScreen()
	 * @generated
	 */
	int SCREEN = 19;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__ID = CONDUIT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__NOTE = CONDUIT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__NAME = CONDUIT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__IN_USE = CONDUIT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__INSTALLED = CONDUIT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__DRAWING_PLACE = CONDUIT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Drains To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__DRAINS_TO = CONDUIT__DRAINS_TO;

	/**
	 * The feature id for the '<em><b>Mesh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__MESH = CONDUIT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__AREA = CONDUIT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Open Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__OPEN_SHARE = CONDUIT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Blocked Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__BLOCKED_SHARE = CONDUIT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Lost Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__LOST_SHARE = CONDUIT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Rim Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN__RIM_HEIGHT = CONDUIT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Screen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_FEATURE_COUNT = CONDUIT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Screen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SCREEN_OPERATION_COUNT = CONDUIT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl <em>First Flush Diverter</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.FirstFlushDiverterImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFirstFlushDiverter()
	 * @generated
	 */
	int FIRST_FLUSH_DIVERTER = 20;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__ID = CONDUIT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__NOTE = CONDUIT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__NAME = CONDUIT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__IN_USE = CONDUIT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__INSTALLED = CONDUIT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__DRAWING_PLACE = CONDUIT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Drains To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__DRAINS_TO = CONDUIT__DRAINS_TO;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__DEPTH = CONDUIT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__VOLUME = CONDUIT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reset Dry Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS = CONDUIT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Drain Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__DRAIN_TIME = CONDUIT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Drain Orifice</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__DRAIN_ORIFICE = CONDUIT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER__HEIGHT = CONDUIT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>First Flush Diverter</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER_FEATURE_COUNT = CONDUIT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>First Flush Diverter</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIRST_FLUSH_DIVERTER_OPERATION_COUNT = CONDUIT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TankImpl <em>Tank</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TankImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTank()
	 * @generated
	 */
	int TANK = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__ID = RECEIVER__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__NOTE = RECEIVER__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__NAME = RECEIVER__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__IN_USE = RECEIVER__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__INSTALLED = RECEIVER__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__DRAWING_PLACE = RECEIVER__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__KIND = RECEIVER_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__CAPACITY = RECEIVER_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Dead Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__DEAD_VOLUME = RECEIVER_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Reserve Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__RESERVE_VOLUME = RECEIVER_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Base Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__BASE_LEVEL = RECEIVER_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__HEIGHT = RECEIVER_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Outlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__OUTLET_HEIGHT = RECEIVER_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Reserve Outlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__RESERVE_OUTLET_HEIGHT = RECEIVER_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Overflow Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__OVERFLOW_HEIGHT = RECEIVER_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Inlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__INLET_HEIGHT = RECEIVER_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Level Volume</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__LEVEL_VOLUME = RECEIVER_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Start Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__START_HEIGHT = RECEIVER_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Stop Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__STOP_HEIGHT = RECEIVER_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Current Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__CURRENT_HEIGHT = RECEIVER_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Current Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__CURRENT_DATE = RECEIVER_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Place In Ground</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__PLACE_IN_GROUND = RECEIVER_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Cover</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__COVER = RECEIVER_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__MATERIAL = RECEIVER_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__DIAMETER = RECEIVER_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__LENGTH = RECEIVER_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__WIDTH = RECEIVER_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Open Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__OPEN_AREA = RECEIVER_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Evaporation Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__EVAPORATION_FACTOR = RECEIVER_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Leakage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__LEAKAGE = RECEIVER_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Overflow Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__OVERFLOW_DIAMETER = RECEIVER_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Overflows To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__OVERFLOWS_TO = RECEIVER_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Vent Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__VENT_AREA = RECEIVER_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Screen Mesh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__SCREEN_MESH = RECEIVER_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Floating Intake</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__FLOATING_INTAKE = RECEIVER_FEATURE_COUNT + 28;

	/**
	 * The feature id for the '<em><b>Calmed Inlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__CALMED_INLET = RECEIVER_FEATURE_COUNT + 29;

	/**
	 * The feature id for the '<em><b>Locked Hatch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__LOCKED_HATCH = RECEIVER_FEATURE_COUNT + 30;

	/**
	 * The feature id for the '<em><b>Last Cleaned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__LAST_CLEANED = RECEIVER_FEATURE_COUNT + 31;

	/**
	 * The feature id for the '<em><b>Siting</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK__SITING = RECEIVER_FEATURE_COUNT + 32;

	/**
	 * The number of structural features of the '<em>Tank</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_FEATURE_COUNT = RECEIVER_FEATURE_COUNT + 33;

	/**
	 * The number of operations of the '<em>Tank</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_OPERATION_COUNT = RECEIVER_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.LevelVolumePointImpl <em>Level Volume Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.LevelVolumePointImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLevelVolumePoint()
	 * @generated
	 */
	int LEVEL_VOLUME_POINT = 22;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEVEL_VOLUME_POINT__HEIGHT = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEVEL_VOLUME_POINT__VOLUME = ROW_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Level Volume Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEVEL_VOLUME_POINT_FEATURE_COUNT = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Level Volume Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LEVEL_VOLUME_POINT_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.SitingImpl <em>Siting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.SitingImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSiting()
	 * @generated
	 */
	int SITING = 23;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Latrine Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__LATRINE_DISTANCE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Latrine Uphill</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__LATRINE_UPHILL = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Refuse Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__REFUSE_DISTANCE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Groundwater Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__GROUNDWATER_DEPTH = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Burial Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__BURIAL_DEPTH = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Base Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__BASE_AREA = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Empty Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__EMPTY_MASS = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Soil Cover</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__SOIL_COVER = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Allowed Bearing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__ALLOWED_BEARING = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Stand Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__STAND_HEIGHT = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Foundation Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__FOUNDATION_DISTANCE = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Soakaway</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__SOAKAWAY = ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Soakaway Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__SOAKAWAY_LENGTH = ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Soakaway Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__SOAKAWAY_WIDTH = ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Soakaway Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__SOAKAWAY_DEPTH = ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Soakaway Voids</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__SOAKAWAY_VOIDS = ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Infiltration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__INFILTRATION = ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Tap Drain</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING__TAP_DRAIN = ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The number of structural features of the '<em>Siting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The number of operations of the '<em>Siting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITING_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TankLinkImpl <em>Tank Link</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TankLinkImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankLink()
	 * @generated
	 */
	int TANK_LINK = 24;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__KIND = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__FROM = COMPONENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__TO = COMPONENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sill Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__SILL_HEIGHT = COMPONENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Max Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__MAX_FLOW = COMPONENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Daily Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK__DAILY_VOLUME = COMPONENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Tank Link</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Tank Link</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TANK_LINK_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.JunctionImpl <em>Junction</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.JunctionImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getJunction()
	 * @generated
	 */
	int JUNCTION = 25;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__ID = PIPE_NODE__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__NOTE = PIPE_NODE__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__NAME = PIPE_NODE__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__IN_USE = PIPE_NODE__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__INSTALLED = PIPE_NODE__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__DRAWING_PLACE = PIPE_NODE__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION__LEVEL = PIPE_NODE_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Junction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_FEATURE_COUNT = PIPE_NODE_FEATURE_COUNT + 1;

	/**
	 * The number of operations of the '<em>Junction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JUNCTION_OPERATION_COUNT = PIPE_NODE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PipeRunImpl <em>Pipe Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PipeRunImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPipeRun()
	 * @generated
	 */
	int PIPE_RUN = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__USE = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__FROM = COMPONENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__TO = COMPONENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__BORE = COMPONENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__LENGTH = COMPONENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__MATERIAL = COMPONENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Wall Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__WALL_THICKNESS = COMPONENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Closure Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__CLOSURE_TIME = COMPONENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Pressure Class</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__PRESSURE_CLASS = COMPONENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Roughness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__ROUGHNESS = COMPONENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Aged Roughness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__AGED_ROUGHNESS = COMPONENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Fittings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__FITTINGS = COMPONENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Profile</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN__PROFILE = COMPONENT_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Pipe Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Pipe Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIPE_RUN_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.FittingImpl <em>Fitting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.FittingImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFitting()
	 * @generated
	 */
	int FITTING = 27;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FITTING__KIND = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FITTING__COUNT = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Loss Coefficient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FITTING__LOSS_COEFFICIENT = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Fitting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FITTING_FEATURE_COUNT = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Fitting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FITTING_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ProfilePointImpl <em>Profile Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ProfilePointImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getProfilePoint()
	 * @generated
	 */
	int PROFILE_POINT = 28;

	/**
	 * The feature id for the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT__DISTANCE = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT__LEVEL = ROW_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Profile Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT_FEATURE_COUNT = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Profile Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROFILE_POINT_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PumpDataImpl <em>Pump Data</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PumpDataImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpData()
	 * @generated
	 */
	int PUMP_DATA = 29;

	/**
	 * The feature id for the '<em><b>Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__POINTS = 0;

	/**
	 * The feature id for the '<em><b>Motor Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__MOTOR_EFFICIENCY = 1;

	/**
	 * The feature id for the '<em><b>Rated Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__RATED_SPEED = 2;

	/**
	 * The feature id for the '<em><b>Rated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__RATED_POWER = 3;

	/**
	 * The feature id for the '<em><b>Discharge Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__DISCHARGE_BORE = 4;

	/**
	 * The feature id for the '<em><b>Min Submergence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__MIN_SUBMERGENCE = 5;

	/**
	 * The feature id for the '<em><b>Max Starts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__MAX_STARTS = 6;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__PRICE = 7;

	/**
	 * The feature id for the '<em><b>Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA__DATA_SOURCE = 8;

	/**
	 * The number of structural features of the '<em>Pump Data</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA_FEATURE_COUNT = 9;

	/**
	 * The number of operations of the '<em>Pump Data</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_DATA_OPERATION_COUNT = 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PumpPointImpl <em>Pump Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PumpPointImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpPoint()
	 * @generated
	 */
	int PUMP_POINT = 30;

	/**
	 * The feature id for the '<em><b>Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT__FLOW = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT__HEAD = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT__EFFICIENCY = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Npsh Required</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT__NPSH_REQUIRED = ROW_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Input Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT__INPUT_POWER = ROW_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Pump Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT_FEATURE_COUNT = ROW_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Pump Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_POINT_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PumpImpl <em>Pump</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PumpImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPump()
	 * @generated
	 */
	int PUMP = 31;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__ID = PIPE_NODE__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__NOTE = PIPE_NODE__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__NAME = PIPE_NODE__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__IN_USE = PIPE_NODE__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__INSTALLED = PIPE_NODE__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__DRAWING_PLACE = PIPE_NODE__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__POINTS = PIPE_NODE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Motor Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__MOTOR_EFFICIENCY = PIPE_NODE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rated Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__RATED_SPEED = PIPE_NODE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__RATED_POWER = PIPE_NODE_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Discharge Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__DISCHARGE_BORE = PIPE_NODE_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Min Submergence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__MIN_SUBMERGENCE = PIPE_NODE_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Max Starts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__MAX_STARTS = PIPE_NODE_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__PRICE = PIPE_NODE_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__DATA_SOURCE = PIPE_NODE_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__KIND = PIPE_NODE_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__COUNT = PIPE_NODE_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Arrangement</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__ARRANGEMENT = PIPE_NODE_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__LEVEL = PIPE_NODE_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Speed Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__SPEED_RATIO = PIPE_NODE_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Cut Out Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__CUT_OUT_HEIGHT = PIPE_NODE_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Foot Valve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__FOOT_VALVE = PIPE_NODE_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Energy Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__ENERGY_SOURCE = PIPE_NODE_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Supply Times</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__SUPPLY_TIMES = PIPE_NODE_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Outage Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__OUTAGE_SHARE = PIPE_NODE_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Stroke Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__STROKE_VOLUME = PIPE_NODE_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Strokes Per Minute</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__STROKES_PER_MINUTE = PIPE_NODE_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Candidates</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP__CANDIDATES = PIPE_NODE_FEATURE_COUNT + 21;

	/**
	 * The number of structural features of the '<em>Pump</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_FEATURE_COUNT = PIPE_NODE_FEATURE_COUNT + 22;

	/**
	 * The number of operations of the '<em>Pump</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_OPERATION_COUNT = PIPE_NODE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PumpCandidateImpl <em>Pump Candidate</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PumpCandidateImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpCandidate()
	 * @generated
	 */
	int PUMP_CANDIDATE = 32;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__POINTS = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Motor Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__MOTOR_EFFICIENCY = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rated Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__RATED_SPEED = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__RATED_POWER = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Discharge Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__DISCHARGE_BORE = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Min Submergence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__MIN_SUBMERGENCE = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Max Starts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__MAX_STARTS = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__PRICE = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__DATA_SOURCE = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__MODEL = NAMED_ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Chosen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE__CHOSEN = NAMED_ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Pump Candidate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The number of operations of the '<em>Pump Candidate</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUMP_CANDIDATE_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.SupplyTimeImpl <em>Supply Time</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.SupplyTimeImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSupplyTime()
	 * @generated
	 */
	int SUPPLY_TIME = 33;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_TIME__FROM = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_TIME__TO = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Weekdays</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_TIME__WEEKDAYS = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Supply Time</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_TIME_FEATURE_COUNT = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Supply Time</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SUPPLY_TIME_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PressureVesselImpl <em>Pressure Vessel</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PressureVesselImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPressureVessel()
	 * @generated
	 */
	int PRESSURE_VESSEL = 34;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__ID = PIPE_NODE__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__NOTE = PIPE_NODE__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__NAME = PIPE_NODE__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__IN_USE = PIPE_NODE__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__INSTALLED = PIPE_NODE__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__DRAWING_PLACE = PIPE_NODE__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__VOLUME = PIPE_NODE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Precharge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__PRECHARGE = PIPE_NODE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Cut In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__CUT_IN = PIPE_NODE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Cut Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__CUT_OUT = PIPE_NODE_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL__LEVEL = PIPE_NODE_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Pressure Vessel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL_FEATURE_COUNT = PIPE_NODE_FEATURE_COUNT + 5;

	/**
	 * The number of operations of the '<em>Pressure Vessel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRESSURE_VESSEL_OPERATION_COUNT = PIPE_NODE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TapImpl <em>Tap</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TapImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTap()
	 * @generated
	 */
	int TAP = 35;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__ID = PIPE_NODE__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__NOTE = PIPE_NODE__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__NAME = PIPE_NODE__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__IN_USE = PIPE_NODE__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__INSTALLED = PIPE_NODE__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__DRAWING_PLACE = PIPE_NODE__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__KIND = PIPE_NODE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__LEVEL = PIPE_NODE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Minimum Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__MINIMUM_HEAD = PIPE_NODE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Design Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__DESIGN_FLOW = PIPE_NODE_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Orifice</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__ORIFICE = PIPE_NODE_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Loss Coefficient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__LOSS_COEFFICIENT = PIPE_NODE_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__COUNT = PIPE_NODE_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Open Together</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__OPEN_TOGETHER = PIPE_NODE_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Walking Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP__WALKING_DISTANCE = PIPE_NODE_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Tap</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP_FEATURE_COUNT = PIPE_NODE_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Tap</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TAP_OPERATION_COUNT = PIPE_NODE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.UseCalendarImpl <em>Use Calendar</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.UseCalendarImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUseCalendar()
	 * @generated
	 */
	int USE_CALENDAR = 36;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Periods</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR__PERIODS = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Weekdays</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR__WEEKDAYS = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Holidays</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR__HOLIDAYS = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Use Calendar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Use Calendar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_CALENDAR_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.UsePeriodImpl <em>Use Period</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.UsePeriodImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUsePeriod()
	 * @generated
	 */
	int USE_PERIOD = 37;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PERIOD__NAME = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PERIOD__FROM = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PERIOD__TO = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PERIOD__FACTOR = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Use Period</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PERIOD_FEATURE_COUNT = ROW_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Use Period</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PERIOD_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.HolidayImpl <em>Holiday</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.HolidayImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHoliday()
	 * @generated
	 */
	int HOLIDAY = 38;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLIDAY__NAME = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLIDAY__FROM = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLIDAY__TO = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLIDAY__FACTOR = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Holiday</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLIDAY_FEATURE_COUNT = ROW_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Holiday</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLIDAY_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.UseImpl <em>Use</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.UseImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUse()
	 * @generated
	 */
	int USE = 39;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Purpose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__PURPOSE = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Consumers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__CONSUMERS = COMPONENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__COUNT = COMPONENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Amount Each</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__AMOUNT_EACH = COMPONENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Priority</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__PRIORITY = COMPONENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Vulnerable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__VULNERABLE = COMPONENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Calendar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__CALENDAR = COMPONENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Taps</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__TAPS = COMPONENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Tank</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__TANK = COMPONENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Train</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__TRAIN = COMPONENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Peaks</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__PEAKS = COMPONENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Containers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE__CONTAINERS = COMPONENT_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Use</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 12;

	/**
	 * The number of operations of the '<em>Use</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.UsePeakImpl <em>Use Peak</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.UsePeakImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUsePeak()
	 * @generated
	 */
	int USE_PEAK = 40;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PEAK__FROM = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PEAK__TO = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PEAK__SHARE = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Use Peak</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PEAK_FEATURE_COUNT = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Use Peak</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USE_PEAK_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RationingRuleImpl <em>Rationing Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RationingRuleImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRationingRule()
	 * @generated
	 */
	int RATIONING_RULE = 41;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Tank</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__TANK = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__BELOW = COMPONENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Uses</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__USES = COMPONENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Allowed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__ALLOWED = COMPONENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__FROM = COMPONENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE__TO = COMPONENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Rationing Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Rationing Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIONING_RULE_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TopUpImpl <em>Top Up</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TopUpImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTopUp()
	 * @generated
	 */
	int TOP_UP = 42;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__ID = COMPONENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__NOTE = COMPONENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__NAME = COMPONENT__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__IN_USE = COMPONENT__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__INSTALLED = COMPONENT__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__DRAWING_PLACE = COMPONENT__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__SOURCE = COMPONENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Tank</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__TANK = COMPONENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__LOAD = COMPONENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Order Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__ORDER_BELOW = COMPONENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Delay</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__DELAY = COMPONENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__PRICE = COMPONENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Most Per Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP__MOST_PER_YEAR = COMPONENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Top Up</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP_FEATURE_COUNT = COMPONENT_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Top Up</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TOP_UP_OPERATION_COUNT = COMPONENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RawWaterImpl <em>Raw Water</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RawWaterImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRawWater()
	 * @generated
	 */
	int RAW_WATER = 43;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Tested</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__TESTED = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Turbidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__TURBIDITY = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Ph</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__PH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Alkalinity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__ALKALINITY = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Chlorine Demand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__CHLORINE_DEMAND = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__SOURCE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Pathogens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER__PATHOGENS = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Raw Water</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Raw Water</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RAW_WATER_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.PathogenLevelImpl <em>Pathogen Level</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.PathogenLevelImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPathogenLevel()
	 * @generated
	 */
	int PATHOGEN_LEVEL = 44;

	/**
	 * The feature id for the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL__GROUP = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Pathogen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL__PATHOGEN = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Per Litre</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL__PER_LITRE = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL__LOW = ROW_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL__HIGH = ROW_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL__SOURCE = ROW_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Pathogen Level</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL_FEATURE_COUNT = ROW_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Pathogen Level</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATHOGEN_LEVEL_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TreatmentTrainImpl <em>Treatment Train</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TreatmentTrainImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTreatmentTrain()
	 * @generated
	 */
	int TREATMENT_TRAIN = 45;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__ID = PIPE_NODE__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__NOTE = PIPE_NODE__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__NAME = PIPE_NODE__NAME;

	/**
	 * The feature id for the '<em><b>In Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__IN_USE = PIPE_NODE__IN_USE;

	/**
	 * The feature id for the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__INSTALLED = PIPE_NODE__INSTALLED;

	/**
	 * The feature id for the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__DRAWING_PLACE = PIPE_NODE__DRAWING_PLACE;

	/**
	 * The feature id for the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__LEVEL = PIPE_NODE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Design Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__DESIGN_FLOW = PIPE_NODE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Batch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__BATCH = PIPE_NODE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Steps</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN__STEPS = PIPE_NODE_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Treatment Train</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN_FEATURE_COUNT = PIPE_NODE_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Treatment Train</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_TRAIN_OPERATION_COUNT = PIPE_NODE_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.TreatmentStepImpl <em>Treatment Step</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.TreatmentStepImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTreatmentStep()
	 * @generated
	 */
	int TREATMENT_STEP = 46;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__KIND = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Active</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__ACTIVE = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__RATING = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rating Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__RATING_BASIS = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Reductions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__REDUCTIONS = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Availability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__AVAILABILITY = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Max Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__MAX_FLOW = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Head Loss Clean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__HEAD_LOSS_CLEAN = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Head Loss Fouled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__HEAD_LOSS_FOULED = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Reference Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__REFERENCE_FLOW = NAMED_ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Change Interval</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__CHANGE_INTERVAL = NAMED_ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Change Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__CHANGE_VOLUME = NAMED_ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Change Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__CHANGE_COST = NAMED_ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Last Changed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__LAST_CHANGED = NAMED_ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Max Turbidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__MAX_TURBIDITY = NAMED_ELEMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Energy Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__ENERGY_SOURCE = NAMED_ELEMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__POWER = NAMED_ELEMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Uv Dose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__UV_DOSE = NAMED_ELEMENT_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Validated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__VALIDATED = NAMED_ELEMENT_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Product</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__PRODUCT = NAMED_ELEMENT_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Strength</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__STRENGTH = NAMED_ELEMENT_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Strength Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__STRENGTH_BASIS = NAMED_ELEMENT_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Product Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__PRODUCT_DENSITY = NAMED_ELEMENT_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Product Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__PRODUCT_AGE = NAMED_ELEMENT_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Dose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__DOSE = NAMED_ELEMENT_FEATURE_COUNT + 24;

	/**
	 * The feature id for the '<em><b>Residual</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__RESIDUAL = NAMED_ELEMENT_FEATURE_COUNT + 25;

	/**
	 * The feature id for the '<em><b>Residual Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__RESIDUAL_DATE = NAMED_ELEMENT_FEATURE_COUNT + 26;

	/**
	 * The feature id for the '<em><b>Contact Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__CONTACT_VOLUME = NAMED_ELEMENT_FEATURE_COUNT + 27;

	/**
	 * The feature id for the '<em><b>Contact Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__CONTACT_TIME = NAMED_ELEMENT_FEATURE_COUNT + 28;

	/**
	 * The feature id for the '<em><b>Baffling</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__BAFFLING = NAMED_ELEMENT_FEATURE_COUNT + 29;

	/**
	 * The feature id for the '<em><b>Batch Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP__BATCH_VOLUME = NAMED_ELEMENT_FEATURE_COUNT + 30;

	/**
	 * The number of structural features of the '<em>Treatment Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 31;

	/**
	 * The number of operations of the '<em>Treatment Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_STEP_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.LogReductionImpl <em>Log Reduction</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.LogReductionImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLogReduction()
	 * @generated
	 */
	int LOG_REDUCTION = 47;

	/**
	 * The feature id for the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_REDUCTION__GROUP = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_REDUCTION__LOW = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_REDUCTION__HIGH = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_REDUCTION__SOURCE = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Log Reduction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_REDUCTION_FEATURE_COUNT = ROW_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Log Reduction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_REDUCTION_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.CostItemImpl <em>Cost Item</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.CostItemImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCostItem()
	 * @generated
	 */
	int COST_ITEM = 48;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__CATEGORY = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__AMOUNT = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__QUANTITY = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__UNIT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__ELEMENT = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>First Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__FIRST_YEAR = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Interval</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__INTERVAL = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Life</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__LIFE = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Yearly Change</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__YEARLY_CHANGE = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM__PERSON = NAMED_ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Cost Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Cost Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COST_ITEM_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl <em>Alternative Supply</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.AlternativeSupplyImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getAlternativeSupply()
	 * @generated
	 */
	int ALTERNATIVE_SUPPLY = 49;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__KIND = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__PRICE = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Capital</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__CAPITAL = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Capital Life</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__CAPITAL_LIFE = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Yearly Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__YEARLY_COST = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__ENERGY = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Reliability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__RELIABILITY = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY__SOURCE = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Alternative Supply</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The number of operations of the '<em>Alternative Supply</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALTERNATIVE_SUPPLY_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.EconomyImpl <em>Economy</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.EconomyImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getEconomy()
	 * @generated
	 */
	int ECONOMY = 50;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__BASIS = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Discount Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__DISCOUNT_RATE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Inflation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__INFLATION = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Horizon</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__HORIZON = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Base Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__BASE_YEAR = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Energy Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__ENERGY_PRICE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Labour Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__LABOUR_PRICE = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Tariff</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__TARIFF = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY__PEOPLE = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Economy</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The number of operations of the '<em>Economy</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ECONOMY_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.OptionImpl <em>Option</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.OptionImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getOption()
	 * @generated
	 */
	int OPTION = 51;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Active</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION__ACTIVE = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION__REASON = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION__CHANGES = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Option</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Option</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPTION_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.StageImpl <em>Stage</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.StageImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getStage()
	 * @generated
	 */
	int STAGE = 52;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__ID = OPTION__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__NOTE = OPTION__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__NAME = OPTION__NAME;

	/**
	 * The feature id for the '<em><b>Active</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__ACTIVE = OPTION__ACTIVE;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__REASON = OPTION__REASON;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__CHANGES = OPTION__CHANGES;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__DATE = OPTION_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Budget</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE__BUDGET = OPTION_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Stage</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE_FEATURE_COUNT = OPTION_FEATURE_COUNT + 2;

	/**
	 * The number of operations of the '<em>Stage</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGE_OPERATION_COUNT = OPTION_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ChangeImpl <em>Change</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ChangeImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getChange()
	 * @generated
	 */
	int CHANGE = 53;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE__ELEMENT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Feature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE__FEATURE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE__VALUE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Change</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Change</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANGE_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.UpkeepTaskImpl <em>Upkeep Task</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.UpkeepTaskImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUpkeepTask()
	 * @generated
	 */
	int UPKEEP_TASK = 54;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Elements</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__ELEMENTS = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Interval</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__INTERVAL = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Due On</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__DUE_ON = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>After Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__AFTER_VOLUME = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Before First Rain</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__BEFORE_FIRST_RAIN = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Last Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__LAST_DONE = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Effort</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__EFFORT = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__COST = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__WHO = NAMED_ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Checklist</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__CHECKLIST = NAMED_ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Spares</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__SPARES = NAMED_ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__SOURCE = NAMED_ELEMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK__HAZARD = NAMED_ELEMENT_FEATURE_COUNT + 12;

	/**
	 * The number of structural features of the '<em>Upkeep Task</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 13;

	/**
	 * The number of operations of the '<em>Upkeep Task</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int UPKEEP_TASK_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.SafetyMeasureImpl <em>Safety Measure</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.SafetyMeasureImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSafetyMeasure()
	 * @generated
	 */
	int SAFETY_MEASURE = 55;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__ELEMENT = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__HAZARD = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Control</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__CONTROL = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__LIMIT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Check</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__CHECK = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Action</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__ACTION = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE__WHO = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Safety Measure</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Safety Measure</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAFETY_MEASURE_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.InspectionImpl <em>Inspection</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.InspectionImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getInspection()
	 * @generated
	 */
	int INSPECTION = 56;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__DATE = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Inspector</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__INSPECTOR = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Answers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION__ANSWERS = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Inspection</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Inspection</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.InspectionAnswerImpl <em>Inspection Answer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.InspectionAnswerImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getInspectionAnswer()
	 * @generated
	 */
	int INSPECTION_ANSWER = 57;

	/**
	 * The feature id for the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__QUESTION = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Answer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__ANSWER = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Remark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER__REMARK = ROW_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Inspection Answer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER_FEATURE_COUNT = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of operations of the '<em>Inspection Answer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INSPECTION_ANSWER_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ReadingImpl <em>Reading</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ReadingImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getReading()
	 * @generated
	 */
	int READING = 58;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__DATE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__TIME = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__KIND = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VALUE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__ELEMENT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reader</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__READER = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.WaterTestImpl <em>Water Test</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.WaterTestImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getWaterTest()
	 * @generated
	 */
	int WATER_TEST = 59;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__DATE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Parameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__PARAMETER = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__VALUE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Below Detection</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__BELOW_DETECTION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__UNIT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__LIMIT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Limit Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__LIMIT_SOURCE = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Laboratory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__LABORATORY = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__ELEMENT = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Action</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST__ACTION = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Water Test</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Water Test</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WATER_TEST_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.IncidentImpl <em>Incident</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.IncidentImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIncident()
	 * @generated
	 */
	int INCIDENT = 60;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ID = NAMED_ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__NOTE = NAMED_ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__NAME = NAMED_ELEMENT__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__KIND = NAMED_ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__FROM = NAMED_ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__TO = NAMED_ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ELEMENT = NAMED_ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Volume Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__VOLUME_LOST = NAMED_ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Action</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ACTION = NAMED_ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Incident</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT_FEATURE_COUNT = NAMED_ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Incident</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT_OPERATION_COUNT = NAMED_ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.SharedSchemeImpl <em>Shared Scheme</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.SharedSchemeImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSharedScheme()
	 * @generated
	 */
	int SHARED_SCHEME = 61;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Families</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__FAMILIES = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>People Per Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__PEOPLE_PER_FAMILY = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Key Holder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__KEY_HOLDER = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Ration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__RATION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Monthly Fee</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__MONTHLY_FEE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Night Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__NIGHT_LOSS = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Cash Book</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME__CASH_BOOK = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Shared Scheme</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of operations of the '<em>Shared Scheme</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHARED_SCHEME_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.CashEntryImpl <em>Cash Entry</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.CashEntryImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCashEntry()
	 * @generated
	 */
	int CASH_ENTRY = 62;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASH_ENTRY__DATE = ROW_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASH_ENTRY__AMOUNT = ROW_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASH_ENTRY__WHAT = ROW_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASH_ENTRY__WHO = ROW_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Cash Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASH_ENTRY_FEATURE_COUNT = ROW_FEATURE_COUNT + 4;

	/**
	 * The number of operations of the '<em>Cash Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASH_ENTRY_OPERATION_COUNT = ROW_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.RemarkImpl <em>Remark</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.RemarkImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRemark()
	 * @generated
	 */
	int REMARK = 63;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__KIND = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__ELEMENT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__AUTHOR = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__ROLE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__DATE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__TEXT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Fingerprint</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__FINGERPRINT = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Rests On</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__RESTS_ON = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Settled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__SETTLED = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Replies</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK__REPLIES = ELEMENT_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Remark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 10;

	/**
	 * The number of operations of the '<em>Remark</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMARK_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.internal.impl.ExtensionEntryImpl <em>Extension Entry</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.internal.impl.ExtensionEntryImpl
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getExtensionEntry()
	 * @generated
	 */
	int EXTENSION_ENTRY = 64;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__ID = ELEMENT__ID;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__NOTE = ELEMENT__NOTE;

	/**
	 * The feature id for the '<em><b>Plugin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__PLUGIN = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__SCHEMA = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__KEY = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__TYPE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__VALUE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY__ELEMENT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Extension Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of operations of the '<em>Extension Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTENSION_ENTRY_OPERATION_COUNT = ELEMENT_OPERATION_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.roofspring.site.RainFormat <em>Rain Format</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.RainFormat
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRainFormat()
	 * @generated
	 */
	int RAIN_FORMAT = 65;

	/**
	 * The meta object id for the '{@link org.roofspring.site.DepthUnit <em>Depth Unit</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.DepthUnit
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDepthUnit()
	 * @generated
	 */
	int DEPTH_UNIT = 66;

	/**
	 * The meta object id for the '{@link org.roofspring.site.GapMethod <em>Gap Method</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.GapMethod
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGapMethod()
	 * @generated
	 */
	int GAP_METHOD = 67;

	/**
	 * The meta object id for the '{@link org.roofspring.site.Weekday <em>Weekday</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.Weekday
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getWeekday()
	 * @generated
	 */
	int WEEKDAY = 68;

	/**
	 * The meta object id for the '{@link org.roofspring.site.RoofMaterial <em>Roof Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.RoofMaterial
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRoofMaterial()
	 * @generated
	 */
	int ROOF_MATERIAL = 69;

	/**
	 * The meta object id for the '{@link org.roofspring.site.RunoffBasis <em>Runoff Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.RunoffBasis
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRunoffBasis()
	 * @generated
	 */
	int RUNOFF_BASIS = 70;

	/**
	 * The meta object id for the '{@link org.roofspring.site.Hazard <em>Hazard</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.Hazard
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHazard()
	 * @generated
	 */
	int HAZARD = 71;

	/**
	 * The meta object id for the '{@link org.roofspring.site.GutterProfile <em>Gutter Profile</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.GutterProfile
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGutterProfile()
	 * @generated
	 */
	int GUTTER_PROFILE = 72;

	/**
	 * The meta object id for the '{@link org.roofspring.site.OutletShape <em>Outlet Shape</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.OutletShape
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getOutletShape()
	 * @generated
	 */
	int OUTLET_SHAPE = 73;

	/**
	 * The meta object id for the '{@link org.roofspring.site.TankKind <em>Tank Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.TankKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankKind()
	 * @generated
	 */
	int TANK_KIND = 74;

	/**
	 * The meta object id for the '{@link org.roofspring.site.TankMaterial <em>Tank Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.TankMaterial
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankMaterial()
	 * @generated
	 */
	int TANK_MATERIAL = 75;

	/**
	 * The meta object id for the '{@link org.roofspring.site.TankCover <em>Tank Cover</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.TankCover
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankCover()
	 * @generated
	 */
	int TANK_COVER = 76;

	/**
	 * The meta object id for the '{@link org.roofspring.site.PlaceInGround <em>Place In Ground</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.PlaceInGround
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPlaceInGround()
	 * @generated
	 */
	int PLACE_IN_GROUND = 77;

	/**
	 * The meta object id for the '{@link org.roofspring.site.TankLinkKind <em>Tank Link Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.TankLinkKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankLinkKind()
	 * @generated
	 */
	int TANK_LINK_KIND = 78;

	/**
	 * The meta object id for the '{@link org.roofspring.site.RunUse <em>Run Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.RunUse
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRunUse()
	 * @generated
	 */
	int RUN_USE = 79;

	/**
	 * The meta object id for the '{@link org.roofspring.site.PipeMaterial <em>Pipe Material</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.PipeMaterial
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPipeMaterial()
	 * @generated
	 */
	int PIPE_MATERIAL = 80;

	/**
	 * The meta object id for the '{@link org.roofspring.site.FittingKind <em>Fitting Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.FittingKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFittingKind()
	 * @generated
	 */
	int FITTING_KIND = 81;

	/**
	 * The meta object id for the '{@link org.roofspring.site.PumpKind <em>Pump Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.PumpKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpKind()
	 * @generated
	 */
	int PUMP_KIND = 82;

	/**
	 * The meta object id for the '{@link org.roofspring.site.PumpArrangement <em>Pump Arrangement</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.PumpArrangement
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpArrangement()
	 * @generated
	 */
	int PUMP_ARRANGEMENT = 83;

	/**
	 * The meta object id for the '{@link org.roofspring.site.EnergySource <em>Energy Source</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.EnergySource
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getEnergySource()
	 * @generated
	 */
	int ENERGY_SOURCE = 84;

	/**
	 * The meta object id for the '{@link org.roofspring.site.TapKind <em>Tap Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.TapKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTapKind()
	 * @generated
	 */
	int TAP_KIND = 85;

	/**
	 * The meta object id for the '{@link org.roofspring.site.Purpose <em>Purpose</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.Purpose
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPurpose()
	 * @generated
	 */
	int PURPOSE = 86;

	/**
	 * The meta object id for the '{@link org.roofspring.site.DisinfectantProduct <em>Disinfectant Product</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.DisinfectantProduct
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDisinfectantProduct()
	 * @generated
	 */
	int DISINFECTANT_PRODUCT = 87;

	/**
	 * The meta object id for the '{@link org.roofspring.site.StrengthBasis <em>Strength Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.StrengthBasis
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getStrengthBasis()
	 * @generated
	 */
	int STRENGTH_BASIS = 88;

	/**
	 * The meta object id for the '{@link org.roofspring.site.StepKind <em>Step Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.StepKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getStepKind()
	 * @generated
	 */
	int STEP_KIND = 89;

	/**
	 * The meta object id for the '{@link org.roofspring.site.RatingBasis <em>Rating Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.RatingBasis
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRatingBasis()
	 * @generated
	 */
	int RATING_BASIS = 90;

	/**
	 * The meta object id for the '{@link org.roofspring.site.PathogenGroup <em>Pathogen Group</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.PathogenGroup
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPathogenGroup()
	 * @generated
	 */
	int PATHOGEN_GROUP = 91;

	/**
	 * The meta object id for the '{@link org.roofspring.site.CostCategory <em>Cost Category</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.CostCategory
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCostCategory()
	 * @generated
	 */
	int COST_CATEGORY = 92;

	/**
	 * The meta object id for the '{@link org.roofspring.site.SupplyKind <em>Supply Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.SupplyKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSupplyKind()
	 * @generated
	 */
	int SUPPLY_KIND = 93;

	/**
	 * The meta object id for the '{@link org.roofspring.site.PriceBasis <em>Price Basis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.PriceBasis
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPriceBasis()
	 * @generated
	 */
	int PRICE_BASIS = 94;

	/**
	 * The meta object id for the '{@link org.roofspring.site.ReadingKind <em>Reading Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.ReadingKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getReadingKind()
	 * @generated
	 */
	int READING_KIND = 95;

	/**
	 * The meta object id for the '{@link org.roofspring.site.WaterParameter <em>Water Parameter</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.WaterParameter
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getWaterParameter()
	 * @generated
	 */
	int WATER_PARAMETER = 96;

	/**
	 * The meta object id for the '{@link org.roofspring.site.IncidentKind <em>Incident Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.IncidentKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIncidentKind()
	 * @generated
	 */
	int INCIDENT_KIND = 97;

	/**
	 * The meta object id for the '{@link org.roofspring.site.RemarkKind <em>Remark Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.RemarkKind
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRemarkKind()
	 * @generated
	 */
	int REMARK_KIND = 98;

	/**
	 * The meta object id for the '{@link org.roofspring.site.ValueType <em>Value Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.ValueType
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getValueType()
	 * @generated
	 */
	int VALUE_TYPE = 99;

	/**
	 * The meta object id for the '{@link org.roofspring.site.UnitPreference <em>Unit Preference</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.UnitPreference
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUnitPreference()
	 * @generated
	 */
	int UNIT_PREFERENCE = 100;

	/**
	 * The meta object id for the '{@link org.roofspring.site.TopUpSource <em>Top Up Source</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.TopUpSource
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTopUpSource()
	 * @generated
	 */
	int TOP_UP_SOURCE = 101;

	/**
	 * The meta object id for the '{@link org.roofspring.site.CheckAnswer <em>Check Answer</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.site.CheckAnswer
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCheckAnswer()
	 * @generated
	 */
	int CHECK_ANSWER = 102;

	/**
	 * The meta object id for the '<em>Length</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLength()
	 * @generated
	 */
	int LENGTH = 103;

	/**
	 * The meta object id for the '<em>Level</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLevel()
	 * @generated
	 */
	int LEVEL = 104;

	/**
	 * The meta object id for the '<em>Bore</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getBore()
	 * @generated
	 */
	int BORE = 105;

	/**
	 * The meta object id for the '<em>Rain Depth</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRainDepth()
	 * @generated
	 */
	int RAIN_DEPTH = 106;

	/**
	 * The meta object id for the '<em>Particle Size</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getParticleSize()
	 * @generated
	 */
	int PARTICLE_SIZE = 107;

	/**
	 * The meta object id for the '<em>Head</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHead()
	 * @generated
	 */
	int HEAD = 108;

	/**
	 * The meta object id for the '<em>Area</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getArea()
	 * @generated
	 */
	int AREA = 109;

	/**
	 * The meta object id for the '<em>Opening Area</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getOpeningArea()
	 * @generated
	 */
	int OPENING_AREA = 110;

	/**
	 * The meta object id for the '<em>Volume</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getVolume()
	 * @generated
	 */
	int VOLUME = 111;

	/**
	 * The meta object id for the '<em>Small Volume</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSmallVolume()
	 * @generated
	 */
	int SMALL_VOLUME = 112;

	/**
	 * The meta object id for the '<em>Flow</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFlow()
	 * @generated
	 */
	int FLOW = 113;

	/**
	 * The meta object id for the '<em>Tap Flow</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTapFlow()
	 * @generated
	 */
	int TAP_FLOW = 114;

	/**
	 * The meta object id for the '<em>Daily Volume</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDailyVolume()
	 * @generated
	 */
	int DAILY_VOLUME = 115;

	/**
	 * The meta object id for the '<em>Velocity</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getVelocity()
	 * @generated
	 */
	int VELOCITY = 116;

	/**
	 * The meta object id for the '<em>Pressure</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPressure()
	 * @generated
	 */
	int PRESSURE = 117;

	/**
	 * The meta object id for the '<em>Pressure Head</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPressureHead()
	 * @generated
	 */
	int PRESSURE_HEAD = 118;

	/**
	 * The meta object id for the '<em>Temperature</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTemperature()
	 * @generated
	 */
	int TEMPERATURE = 119;

	/**
	 * The meta object id for the '<em>Power</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPower()
	 * @generated
	 */
	int POWER = 120;

	/**
	 * The meta object id for the '<em>Specific Energy</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSpecificEnergy()
	 * @generated
	 */
	int SPECIFIC_ENERGY = 121;

	/**
	 * The meta object id for the '<em>Seconds</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSeconds()
	 * @generated
	 */
	int SECONDS = 122;

	/**
	 * The meta object id for the '<em>Minutes</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMinutes()
	 * @generated
	 */
	int MINUTES = 123;

	/**
	 * The meta object id for the '<em>Hours</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHours()
	 * @generated
	 */
	int HOURS = 124;

	/**
	 * The meta object id for the '<em>Days</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDays()
	 * @generated
	 */
	int DAYS = 125;

	/**
	 * The meta object id for the '<em>Years</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getYears()
	 * @generated
	 */
	int YEARS = 126;

	/**
	 * The meta object id for the '<em>Intensity</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIntensity()
	 * @generated
	 */
	int INTENSITY = 127;

	/**
	 * The meta object id for the '<em>Concentration</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getConcentration()
	 * @generated
	 */
	int CONCENTRATION = 128;

	/**
	 * The meta object id for the '<em>Uv Dose</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUvDose()
	 * @generated
	 */
	int UV_DOSE = 129;

	/**
	 * The meta object id for the '<em>Turbidity</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTurbidity()
	 * @generated
	 */
	int TURBIDITY = 130;

	/**
	 * The meta object id for the '<em>Density</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDensity()
	 * @generated
	 */
	int DENSITY = 131;

	/**
	 * The meta object id for the '<em>Mass</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMass()
	 * @generated
	 */
	int MASS = 132;

	/**
	 * The meta object id for the '<em>Rotational Speed</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRotationalSpeed()
	 * @generated
	 */
	int ROTATIONAL_SPEED = 133;

	/**
	 * The meta object id for the '<em>Angle</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getAngle()
	 * @generated
	 */
	int ANGLE = 134;

	/**
	 * The meta object id for the '<em>Rate</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRate()
	 * @generated
	 */
	int RATE = 135;

	/**
	 * The meta object id for the '<em>Money</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMoney()
	 * @generated
	 */
	int MONEY = 136;

	/**
	 * The meta object id for the '<em>Unit Cost</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUnitCost()
	 * @generated
	 */
	int UNIT_COST = 137;

	/**
	 * The meta object id for the '<em>Energy Cost</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getEnergyCost()
	 * @generated
	 */
	int ENERGY_COST = 138;

	/**
	 * The meta object id for the '<em>Coefficient</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCoefficient()
	 * @generated
	 */
	int COEFFICIENT = 139;

	/**
	 * The meta object id for the '<em>Share</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getShare()
	 * @generated
	 */
	int SHARE = 140;

	/**
	 * The meta object id for the '<em>Measurement</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.roofspring.quantity.Quantity
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMeasurement()
	 * @generated
	 */
	int MEASUREMENT = 141;

	/**
	 * The meta object id for the '<em>Date</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalDate
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDate()
	 * @generated
	 */
	int DATE = 142;

	/**
	 * The meta object id for the '<em>Day Of Year</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.MonthDay
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDayOfYear()
	 * @generated
	 */
	int DAY_OF_YEAR = 143;

	/**
	 * The meta object id for the '<em>Time Of Day</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see java.time.LocalTime
	 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTimeOfDay()
	 * @generated
	 */
	int TIME_OF_DAY = 144;


	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Row <em>Row</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Row</em>'.
	 * @see org.roofspring.site.Row
	 * @generated
	 */
	EClass getRow();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Element</em>'.
	 * @see org.roofspring.site.Element
	 * @generated
	 */
	EClass getElement();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Element#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.roofspring.site.Element#getId()
	 * @see #getElement()
	 * @generated
	 */
	EAttribute getElement_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Element#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see org.roofspring.site.Element#getNote()
	 * @see #getElement()
	 * @generated
	 */
	EAttribute getElement_Note();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.NamedElement <em>Named Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Named Element</em>'.
	 * @see org.roofspring.site.NamedElement
	 * @generated
	 */
	EClass getNamedElement();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.NamedElement#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.roofspring.site.NamedElement#getName()
	 * @see #getNamedElement()
	 * @generated
	 */
	EAttribute getNamedElement_Name();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Component <em>Component</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Component</em>'.
	 * @see org.roofspring.site.Component
	 * @generated
	 */
	EClass getComponent();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Component#isInUse <em>In Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In Use</em>'.
	 * @see org.roofspring.site.Component#isInUse()
	 * @see #getComponent()
	 * @generated
	 */
	EAttribute getComponent_InUse();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Component#getInstalled <em>Installed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Installed</em>'.
	 * @see org.roofspring.site.Component#getInstalled()
	 * @see #getComponent()
	 * @generated
	 */
	EAttribute getComponent_Installed();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Component#getDrawingPlace <em>Drawing Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drawing Place</em>'.
	 * @see org.roofspring.site.Component#getDrawingPlace()
	 * @see #getComponent()
	 * @generated
	 */
	EAttribute getComponent_DrawingPlace();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Receiver <em>Receiver</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Receiver</em>'.
	 * @see org.roofspring.site.Receiver
	 * @generated
	 */
	EClass getReceiver();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Conduit <em>Conduit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Conduit</em>'.
	 * @see org.roofspring.site.Conduit
	 * @generated
	 */
	EClass getConduit();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Conduit#getDrainsTo <em>Drains To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Drains To</em>'.
	 * @see org.roofspring.site.Conduit#getDrainsTo()
	 * @see #getConduit()
	 * @generated
	 */
	EReference getConduit_DrainsTo();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PipeNode <em>Pipe Node</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pipe Node</em>'.
	 * @see org.roofspring.site.PipeNode
	 * @generated
	 */
	EClass getPipeNode();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Site</em>'.
	 * @see org.roofspring.site.Site
	 * @generated
	 */
	EClass getSite();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getSchemaVersion <em>Schema Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Schema Version</em>'.
	 * @see org.roofspring.site.Site#getSchemaVersion()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_SchemaVersion();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see org.roofspring.site.Site#getPlace()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Place();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getLatitude <em>Latitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latitude</em>'.
	 * @see org.roofspring.site.Site#getLatitude()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Latitude();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getAltitude <em>Altitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Altitude</em>'.
	 * @see org.roofspring.site.Site#getAltitude()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Altitude();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getWaterTemperatureMin <em>Water Temperature Min</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Temperature Min</em>'.
	 * @see org.roofspring.site.Site#getWaterTemperatureMin()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_WaterTemperatureMin();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getWaterTemperatureUsual <em>Water Temperature Usual</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Temperature Usual</em>'.
	 * @see org.roofspring.site.Site#getWaterTemperatureUsual()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_WaterTemperatureUsual();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getWaterTemperatureMax <em>Water Temperature Max</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Water Temperature Max</em>'.
	 * @see org.roofspring.site.Site#getWaterTemperatureMax()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_WaterTemperatureMax();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see org.roofspring.site.Site#getCurrency()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Currency();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getPreferredUnits <em>Preferred Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Preferred Units</em>'.
	 * @see org.roofspring.site.Site#getPreferredUnits()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_PreferredUnits();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getAuthor <em>Author</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Author</em>'.
	 * @see org.roofspring.site.Site#getAuthor()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Author();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getClient <em>Client</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Client</em>'.
	 * @see org.roofspring.site.Site#getClient()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Client();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Site#getCreated <em>Created</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Created</em>'.
	 * @see org.roofspring.site.Site#getCreated()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Created();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.Site#getRain <em>Rain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Rain</em>'.
	 * @see org.roofspring.site.Site#getRain()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Rain();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.Site#getTarget <em>Target</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Target</em>'.
	 * @see org.roofspring.site.Site#getTarget()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Target();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getRoofs <em>Roofs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Roofs</em>'.
	 * @see org.roofspring.site.Site#getRoofs()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Roofs();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getGutters <em>Gutters</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Gutters</em>'.
	 * @see org.roofspring.site.Site#getGutters()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Gutters();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getDownpipes <em>Downpipes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Downpipes</em>'.
	 * @see org.roofspring.site.Site#getDownpipes()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Downpipes();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getScreens <em>Screens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Screens</em>'.
	 * @see org.roofspring.site.Site#getScreens()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Screens();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getDiverters <em>Diverters</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Diverters</em>'.
	 * @see org.roofspring.site.Site#getDiverters()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Diverters();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getTanks <em>Tanks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Tanks</em>'.
	 * @see org.roofspring.site.Site#getTanks()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Tanks();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getTankLinks <em>Tank Links</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Tank Links</em>'.
	 * @see org.roofspring.site.Site#getTankLinks()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_TankLinks();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getJunctions <em>Junctions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Junctions</em>'.
	 * @see org.roofspring.site.Site#getJunctions()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Junctions();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getPipeRuns <em>Pipe Runs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pipe Runs</em>'.
	 * @see org.roofspring.site.Site#getPipeRuns()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_PipeRuns();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getPumps <em>Pumps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pumps</em>'.
	 * @see org.roofspring.site.Site#getPumps()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Pumps();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getPressureVessels <em>Pressure Vessels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pressure Vessels</em>'.
	 * @see org.roofspring.site.Site#getPressureVessels()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_PressureVessels();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getTaps <em>Taps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Taps</em>'.
	 * @see org.roofspring.site.Site#getTaps()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Taps();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getCalendars <em>Calendars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Calendars</em>'.
	 * @see org.roofspring.site.Site#getCalendars()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Calendars();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getUses <em>Uses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Uses</em>'.
	 * @see org.roofspring.site.Site#getUses()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Uses();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getRationing <em>Rationing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Rationing</em>'.
	 * @see org.roofspring.site.Site#getRationing()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Rationing();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getTopUps <em>Top Ups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Top Ups</em>'.
	 * @see org.roofspring.site.Site#getTopUps()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_TopUps();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.Site#getRawWater <em>Raw Water</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Raw Water</em>'.
	 * @see org.roofspring.site.Site#getRawWater()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_RawWater();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getTrains <em>Trains</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Trains</em>'.
	 * @see org.roofspring.site.Site#getTrains()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Trains();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getCosts <em>Costs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Costs</em>'.
	 * @see org.roofspring.site.Site#getCosts()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Costs();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getAlternatives <em>Alternatives</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Alternatives</em>'.
	 * @see org.roofspring.site.Site#getAlternatives()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Alternatives();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.Site#getEconomy <em>Economy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Economy</em>'.
	 * @see org.roofspring.site.Site#getEconomy()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Economy();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getStages <em>Stages</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stages</em>'.
	 * @see org.roofspring.site.Site#getStages()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Stages();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getOptions <em>Options</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Options</em>'.
	 * @see org.roofspring.site.Site#getOptions()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Options();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getUpkeep <em>Upkeep</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Upkeep</em>'.
	 * @see org.roofspring.site.Site#getUpkeep()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Upkeep();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getSafetyPlan <em>Safety Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Safety Plan</em>'.
	 * @see org.roofspring.site.Site#getSafetyPlan()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_SafetyPlan();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getInspections <em>Inspections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inspections</em>'.
	 * @see org.roofspring.site.Site#getInspections()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Inspections();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getReadings <em>Readings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Readings</em>'.
	 * @see org.roofspring.site.Site#getReadings()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Readings();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getWaterTests <em>Water Tests</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Water Tests</em>'.
	 * @see org.roofspring.site.Site#getWaterTests()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_WaterTests();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getIncidents <em>Incidents</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Incidents</em>'.
	 * @see org.roofspring.site.Site#getIncidents()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Incidents();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.Site#getScheme <em>Scheme</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Scheme</em>'.
	 * @see org.roofspring.site.Site#getScheme()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Scheme();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getRemarks <em>Remarks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Remarks</em>'.
	 * @see org.roofspring.site.Site#getRemarks()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Remarks();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Site#getExtensions <em>Extensions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Extensions</em>'.
	 * @see org.roofspring.site.Site#getExtensions()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Extensions();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Target <em>Target</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Target</em>'.
	 * @see org.roofspring.site.Target
	 * @generated
	 */
	EClass getTarget();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getTimeReliability <em>Time Reliability</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time Reliability</em>'.
	 * @see org.roofspring.site.Target#getTimeReliability()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_TimeReliability();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getVolumetricReliability <em>Volumetric Reliability</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volumetric Reliability</em>'.
	 * @see org.roofspring.site.Target#getVolumetricReliability()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_VolumetricReliability();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getLongestShortage <em>Longest Shortage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Longest Shortage</em>'.
	 * @see org.roofspring.site.Target#getLongestShortage()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_LongestShortage();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getReserve <em>Reserve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reserve</em>'.
	 * @see org.roofspring.site.Target#getReserve()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Reserve();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getPumpOutage <em>Pump Outage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pump Outage</em>'.
	 * @see org.roofspring.site.Target#getPumpOutage()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_PumpOutage();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getConfidence <em>Confidence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confidence</em>'.
	 * @see org.roofspring.site.Target#getConfidence()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Confidence();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getBudget <em>Budget</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Budget</em>'.
	 * @see org.roofspring.site.Target#getBudget()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_Budget();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getInfectionTarget <em>Infection Target</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Infection Target</em>'.
	 * @see org.roofspring.site.Target#getInfectionTarget()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_InfectionTarget();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Target#getBurdenTarget <em>Burden Target</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Burden Target</em>'.
	 * @see org.roofspring.site.Target#getBurdenTarget()
	 * @see #getTarget()
	 * @generated
	 */
	EAttribute getTarget_BurdenTarget();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.RainSource <em>Rain Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rain Source</em>'.
	 * @see org.roofspring.site.RainSource
	 * @generated
	 */
	EClass getRainSource();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see org.roofspring.site.RainSource#getFile()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_File();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getFormat <em>Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format</em>'.
	 * @see org.roofspring.site.RainSource#getFormat()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_Format();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDateColumn <em>Date Column</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date Column</em>'.
	 * @see org.roofspring.site.RainSource#getDateColumn()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DateColumn();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDepthColumn <em>Depth Column</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth Column</em>'.
	 * @see org.roofspring.site.RainSource#getDepthColumn()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DepthColumn();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDatePattern <em>Date Pattern</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date Pattern</em>'.
	 * @see org.roofspring.site.RainSource#getDatePattern()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DatePattern();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDelimiter <em>Delimiter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Delimiter</em>'.
	 * @see org.roofspring.site.RainSource#getDelimiter()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_Delimiter();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#isDecimalComma <em>Decimal Comma</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Decimal Comma</em>'.
	 * @see org.roofspring.site.RainSource#isDecimalComma()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DecimalComma();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDepthUnit <em>Depth Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth Unit</em>'.
	 * @see org.roofspring.site.RainSource#getDepthUnit()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DepthUnit();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getGapMethod <em>Gap Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Gap Method</em>'.
	 * @see org.roofspring.site.RainSource#getGapMethod()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_GapMethod();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getFirstDay <em>First Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>First Day</em>'.
	 * @see org.roofspring.site.RainSource#getFirstDay()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_FirstDay();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getLastDay <em>Last Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Day</em>'.
	 * @see org.roofspring.site.RainSource#getLastDay()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_LastDay();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getStation <em>Station</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Station</em>'.
	 * @see org.roofspring.site.RainSource#getStation()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_Station();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getStationAltitude <em>Station Altitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Station Altitude</em>'.
	 * @see org.roofspring.site.RainSource#getStationAltitude()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_StationAltitude();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDistance <em>Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance</em>'.
	 * @see org.roofspring.site.RainSource#getDistance()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_Distance();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDonorFile <em>Donor File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Donor File</em>'.
	 * @see org.roofspring.site.RainSource#getDonorFile()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DonorFile();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDonorStation <em>Donor Station</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Donor Station</em>'.
	 * @see org.roofspring.site.RainSource#getDonorStation()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DonorStation();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#isScaleToNormals <em>Scale To Normals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale To Normals</em>'.
	 * @see org.roofspring.site.RainSource#isScaleToNormals()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_ScaleToNormals();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.RainSource#getNormals <em>Normals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Normals</em>'.
	 * @see org.roofspring.site.RainSource#getNormals()
	 * @see #getRainSource()
	 * @generated
	 */
	EReference getRainSource_Normals();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#isSynthesize <em>Synthesize</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Synthesize</em>'.
	 * @see org.roofspring.site.RainSource#isSynthesize()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_Synthesize();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getSyntheticYears <em>Synthetic Years</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Synthetic Years</em>'.
	 * @see org.roofspring.site.RainSource#getSyntheticYears()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_SyntheticYears();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getSeed <em>Seed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seed</em>'.
	 * @see org.roofspring.site.RainSource#getSeed()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_Seed();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.RainSource#getStress <em>Stress</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Stress</em>'.
	 * @see org.roofspring.site.RainSource#getStress()
	 * @see #getRainSource()
	 * @generated
	 */
	EReference getRainSource_Stress();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.RainSource#getIntensities <em>Intensities</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Intensities</em>'.
	 * @see org.roofspring.site.RainSource#getIntensities()
	 * @see #getRainSource()
	 * @generated
	 */
	EReference getRainSource_Intensities();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getReturnPeriod <em>Return Period</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Return Period</em>'.
	 * @see org.roofspring.site.RainSource#getReturnPeriod()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_ReturnPeriod();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getPeakDuration <em>Peak Duration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Peak Duration</em>'.
	 * @see org.roofspring.site.RainSource#getPeakDuration()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_PeakDuration();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDayToShortRatio <em>Day To Short Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Day To Short Ratio</em>'.
	 * @see org.roofspring.site.RainSource#getDayToShortRatio()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DayToShortRatio();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RainSource#getDayFactor <em>Day Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Day Factor</em>'.
	 * @see org.roofspring.site.RainSource#getDayFactor()
	 * @see #getRainSource()
	 * @generated
	 */
	EAttribute getRainSource_DayFactor();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.MonthlyNormal <em>Monthly Normal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Monthly Normal</em>'.
	 * @see org.roofspring.site.MonthlyNormal
	 * @generated
	 */
	EClass getMonthlyNormal();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.MonthlyNormal#getMonth <em>Month</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Month</em>'.
	 * @see org.roofspring.site.MonthlyNormal#getMonth()
	 * @see #getMonthlyNormal()
	 * @generated
	 */
	EAttribute getMonthlyNormal_Month();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.MonthlyNormal#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see org.roofspring.site.MonthlyNormal#getDepth()
	 * @see #getMonthlyNormal()
	 * @generated
	 */
	EAttribute getMonthlyNormal_Depth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.MonthlyNormal#getWetDays <em>Wet Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wet Days</em>'.
	 * @see org.roofspring.site.MonthlyNormal#getWetDays()
	 * @see #getMonthlyNormal()
	 * @generated
	 */
	EAttribute getMonthlyNormal_WetDays();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.MonthlyNormal#getEvaporation <em>Evaporation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Evaporation</em>'.
	 * @see org.roofspring.site.MonthlyNormal#getEvaporation()
	 * @see #getMonthlyNormal()
	 * @generated
	 */
	EAttribute getMonthlyNormal_Evaporation();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.ClimateStress <em>Climate Stress</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Climate Stress</em>'.
	 * @see org.roofspring.site.ClimateStress
	 * @generated
	 */
	EClass getClimateStress();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ClimateStress#getDepthFactor <em>Depth Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth Factor</em>'.
	 * @see org.roofspring.site.ClimateStress#getDepthFactor()
	 * @see #getClimateStress()
	 * @generated
	 */
	EAttribute getClimateStress_DepthFactor();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ClimateStress#getDrySeasonLonger <em>Dry Season Longer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dry Season Longer</em>'.
	 * @see org.roofspring.site.ClimateStress#getDrySeasonLonger()
	 * @see #getClimateStress()
	 * @generated
	 */
	EAttribute getClimateStress_DrySeasonLonger();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.ClimateStress#getSeasons <em>Seasons</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Seasons</em>'.
	 * @see org.roofspring.site.ClimateStress#getSeasons()
	 * @see #getClimateStress()
	 * @generated
	 */
	EReference getClimateStress_Seasons();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.SeasonFactor <em>Season Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Season Factor</em>'.
	 * @see org.roofspring.site.SeasonFactor
	 * @generated
	 */
	EClass getSeasonFactor();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SeasonFactor#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.SeasonFactor#getFrom()
	 * @see #getSeasonFactor()
	 * @generated
	 */
	EAttribute getSeasonFactor_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SeasonFactor#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.SeasonFactor#getTo()
	 * @see #getSeasonFactor()
	 * @generated
	 */
	EAttribute getSeasonFactor_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SeasonFactor#getFactor <em>Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Factor</em>'.
	 * @see org.roofspring.site.SeasonFactor#getFactor()
	 * @see #getSeasonFactor()
	 * @generated
	 */
	EAttribute getSeasonFactor_Factor();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.IntensityPoint <em>Intensity Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Intensity Point</em>'.
	 * @see org.roofspring.site.IntensityPoint
	 * @generated
	 */
	EClass getIntensityPoint();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.IntensityPoint#getDuration <em>Duration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Duration</em>'.
	 * @see org.roofspring.site.IntensityPoint#getDuration()
	 * @see #getIntensityPoint()
	 * @generated
	 */
	EAttribute getIntensityPoint_Duration();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.IntensityPoint#getReturnPeriod <em>Return Period</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Return Period</em>'.
	 * @see org.roofspring.site.IntensityPoint#getReturnPeriod()
	 * @see #getIntensityPoint()
	 * @generated
	 */
	EAttribute getIntensityPoint_ReturnPeriod();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.IntensityPoint#getIntensity <em>Intensity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Intensity</em>'.
	 * @see org.roofspring.site.IntensityPoint#getIntensity()
	 * @see #getIntensityPoint()
	 * @generated
	 */
	EAttribute getIntensityPoint_Intensity();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Roof <em>Roof</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Roof</em>'.
	 * @see org.roofspring.site.Roof
	 * @generated
	 */
	EClass getRoof();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getPlanArea <em>Plan Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plan Area</em>'.
	 * @see org.roofspring.site.Roof#getPlanArea()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_PlanArea();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getPitch <em>Pitch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pitch</em>'.
	 * @see org.roofspring.site.Roof#getPitch()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_Pitch();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getEavesLength <em>Eaves Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Eaves Length</em>'.
	 * @see org.roofspring.site.Roof#getEavesLength()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_EavesLength();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getSlopeHeight <em>Slope Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slope Height</em>'.
	 * @see org.roofspring.site.Roof#getSlopeHeight()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_SlopeHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getEavesLevel <em>Eaves Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Eaves Level</em>'.
	 * @see org.roofspring.site.Roof#getEavesLevel()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_EavesLevel();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see org.roofspring.site.Roof#getMaterial()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getRunoffCoefficient <em>Runoff Coefficient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Runoff Coefficient</em>'.
	 * @see org.roofspring.site.Roof#getRunoffCoefficient()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_RunoffCoefficient();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getRunoffBasis <em>Runoff Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Runoff Basis</em>'.
	 * @see org.roofspring.site.Roof#getRunoffBasis()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_RunoffBasis();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getInitialLoss <em>Initial Loss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Initial Loss</em>'.
	 * @see org.roofspring.site.Roof#getInitialLoss()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_InitialLoss();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getCollectionEfficiency <em>Collection Efficiency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Collection Efficiency</em>'.
	 * @see org.roofspring.site.Roof#getCollectionEfficiency()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_CollectionEfficiency();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getPeakRunoff <em>Peak Runoff</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Peak Runoff</em>'.
	 * @see org.roofspring.site.Roof#getPeakRunoff()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_PeakRunoff();

	/**
	 * Returns the meta object for the attribute list '{@link org.roofspring.site.Roof#getHazards <em>Hazards</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Hazards</em>'.
	 * @see org.roofspring.site.Roof#getHazards()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_Hazards();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Roof#getAge <em>Age</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Age</em>'.
	 * @see org.roofspring.site.Roof#getAge()
	 * @see #getRoof()
	 * @generated
	 */
	EAttribute getRoof_Age();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Roof#getDrains <em>Drains</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Drains</em>'.
	 * @see org.roofspring.site.Roof#getDrains()
	 * @see #getRoof()
	 * @generated
	 */
	EReference getRoof_Drains();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.RoofDrain <em>Roof Drain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Roof Drain</em>'.
	 * @see org.roofspring.site.RoofDrain
	 * @generated
	 */
	EClass getRoofDrain();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.RoofDrain#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>To</em>'.
	 * @see org.roofspring.site.RoofDrain#getTo()
	 * @see #getRoofDrain()
	 * @generated
	 */
	EReference getRoofDrain_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RoofDrain#getShare <em>Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Share</em>'.
	 * @see org.roofspring.site.RoofDrain#getShare()
	 * @see #getRoofDrain()
	 * @generated
	 */
	EAttribute getRoofDrain_Share();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Gutter <em>Gutter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Gutter</em>'.
	 * @see org.roofspring.site.Gutter
	 * @generated
	 */
	EClass getGutter();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getProfile <em>Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Profile</em>'.
	 * @see org.roofspring.site.Gutter#getProfile()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Profile();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.roofspring.site.Gutter#getWidth()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getSoleWidth <em>Sole Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sole Width</em>'.
	 * @see org.roofspring.site.Gutter#getSoleWidth()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_SoleWidth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see org.roofspring.site.Gutter#getDepth()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Depth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getFreeboard <em>Freeboard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Freeboard</em>'.
	 * @see org.roofspring.site.Gutter#getFreeboard()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Freeboard();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.roofspring.site.Gutter#getLength()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getSlope <em>Slope</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slope</em>'.
	 * @see org.roofspring.site.Gutter#getSlope()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Slope();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getRoughness <em>Roughness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Roughness</em>'.
	 * @see org.roofspring.site.Gutter#getRoughness()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Roughness();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.Gutter#getLevel()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Level();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getBends <em>Bends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bends</em>'.
	 * @see org.roofspring.site.Gutter#getBends()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_Bends();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#isLeafGuard <em>Leaf Guard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leaf Guard</em>'.
	 * @see org.roofspring.site.Gutter#isLeafGuard()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_LeafGuard();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Gutter#getLastCleaned <em>Last Cleaned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Cleaned</em>'.
	 * @see org.roofspring.site.Gutter#getLastCleaned()
	 * @see #getGutter()
	 * @generated
	 */
	EAttribute getGutter_LastCleaned();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Gutter#getOutlets <em>Outlets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Outlets</em>'.
	 * @see org.roofspring.site.Gutter#getOutlets()
	 * @see #getGutter()
	 * @generated
	 */
	EReference getGutter_Outlets();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.GutterOutlet <em>Gutter Outlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Gutter Outlet</em>'.
	 * @see org.roofspring.site.GutterOutlet
	 * @generated
	 */
	EClass getGutterOutlet();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.GutterOutlet#getPosition <em>Position</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Position</em>'.
	 * @see org.roofspring.site.GutterOutlet#getPosition()
	 * @see #getGutterOutlet()
	 * @generated
	 */
	EAttribute getGutterOutlet_Position();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.GutterOutlet#getShape <em>Shape</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shape</em>'.
	 * @see org.roofspring.site.GutterOutlet#getShape()
	 * @see #getGutterOutlet()
	 * @generated
	 */
	EAttribute getGutterOutlet_Shape();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.GutterOutlet#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.roofspring.site.GutterOutlet#getDiameter()
	 * @see #getGutterOutlet()
	 * @generated
	 */
	EAttribute getGutterOutlet_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.GutterOutlet#isStrainer <em>Strainer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strainer</em>'.
	 * @see org.roofspring.site.GutterOutlet#isStrainer()
	 * @see #getGutterOutlet()
	 * @generated
	 */
	EAttribute getGutterOutlet_Strainer();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.GutterOutlet#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>To</em>'.
	 * @see org.roofspring.site.GutterOutlet#getTo()
	 * @see #getGutterOutlet()
	 * @generated
	 */
	EReference getGutterOutlet_To();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Downpipe <em>Downpipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Downpipe</em>'.
	 * @see org.roofspring.site.Downpipe
	 * @generated
	 */
	EClass getDownpipe();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Downpipe#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see org.roofspring.site.Downpipe#getBore()
	 * @see #getDownpipe()
	 * @generated
	 */
	EAttribute getDownpipe_Bore();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Downpipe#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.roofspring.site.Downpipe#getLength()
	 * @see #getDownpipe()
	 * @generated
	 */
	EAttribute getDownpipe_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Downpipe#getFillShare <em>Fill Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fill Share</em>'.
	 * @see org.roofspring.site.Downpipe#getFillShare()
	 * @see #getDownpipe()
	 * @generated
	 */
	EAttribute getDownpipe_FillShare();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Downpipe#isWet <em>Wet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wet</em>'.
	 * @see org.roofspring.site.Downpipe#isWet()
	 * @see #getDownpipe()
	 * @generated
	 */
	EAttribute getDownpipe_Wet();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Screen <em>Screen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Screen</em>'.
	 * @see org.roofspring.site.Screen
	 * @generated
	 */
	EClass getScreen();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Screen#getMesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mesh</em>'.
	 * @see org.roofspring.site.Screen#getMesh()
	 * @see #getScreen()
	 * @generated
	 */
	EAttribute getScreen_Mesh();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Screen#getArea <em>Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Area</em>'.
	 * @see org.roofspring.site.Screen#getArea()
	 * @see #getScreen()
	 * @generated
	 */
	EAttribute getScreen_Area();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Screen#getOpenShare <em>Open Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Share</em>'.
	 * @see org.roofspring.site.Screen#getOpenShare()
	 * @see #getScreen()
	 * @generated
	 */
	EAttribute getScreen_OpenShare();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Screen#getBlockedShare <em>Blocked Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blocked Share</em>'.
	 * @see org.roofspring.site.Screen#getBlockedShare()
	 * @see #getScreen()
	 * @generated
	 */
	EAttribute getScreen_BlockedShare();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Screen#getLostShare <em>Lost Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lost Share</em>'.
	 * @see org.roofspring.site.Screen#getLostShare()
	 * @see #getScreen()
	 * @generated
	 */
	EAttribute getScreen_LostShare();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Screen#getRimHeight <em>Rim Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rim Height</em>'.
	 * @see org.roofspring.site.Screen#getRimHeight()
	 * @see #getScreen()
	 * @generated
	 */
	EAttribute getScreen_RimHeight();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.FirstFlushDiverter <em>First Flush Diverter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>First Flush Diverter</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter
	 * @generated
	 */
	EClass getFirstFlushDiverter();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.FirstFlushDiverter#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter#getDepth()
	 * @see #getFirstFlushDiverter()
	 * @generated
	 */
	EAttribute getFirstFlushDiverter_Depth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.FirstFlushDiverter#getVolume <em>Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volume</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter#getVolume()
	 * @see #getFirstFlushDiverter()
	 * @generated
	 */
	EAttribute getFirstFlushDiverter_Volume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.FirstFlushDiverter#getResetDryDays <em>Reset Dry Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reset Dry Days</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter#getResetDryDays()
	 * @see #getFirstFlushDiverter()
	 * @generated
	 */
	EAttribute getFirstFlushDiverter_ResetDryDays();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.FirstFlushDiverter#getDrainTime <em>Drain Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drain Time</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter#getDrainTime()
	 * @see #getFirstFlushDiverter()
	 * @generated
	 */
	EAttribute getFirstFlushDiverter_DrainTime();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.FirstFlushDiverter#getDrainOrifice <em>Drain Orifice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Drain Orifice</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter#getDrainOrifice()
	 * @see #getFirstFlushDiverter()
	 * @generated
	 */
	EAttribute getFirstFlushDiverter_DrainOrifice();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.FirstFlushDiverter#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.roofspring.site.FirstFlushDiverter#getHeight()
	 * @see #getFirstFlushDiverter()
	 * @generated
	 */
	EAttribute getFirstFlushDiverter_Height();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Tank <em>Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Tank</em>'.
	 * @see org.roofspring.site.Tank
	 * @generated
	 */
	EClass getTank();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Tank#getKind()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getCapacity <em>Capacity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capacity</em>'.
	 * @see org.roofspring.site.Tank#getCapacity()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Capacity();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getDeadVolume <em>Dead Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dead Volume</em>'.
	 * @see org.roofspring.site.Tank#getDeadVolume()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_DeadVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getReserveVolume <em>Reserve Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reserve Volume</em>'.
	 * @see org.roofspring.site.Tank#getReserveVolume()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_ReserveVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getBaseLevel <em>Base Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base Level</em>'.
	 * @see org.roofspring.site.Tank#getBaseLevel()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_BaseLevel();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.roofspring.site.Tank#getHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Height();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getOutletHeight <em>Outlet Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outlet Height</em>'.
	 * @see org.roofspring.site.Tank#getOutletHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_OutletHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getReserveOutletHeight <em>Reserve Outlet Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reserve Outlet Height</em>'.
	 * @see org.roofspring.site.Tank#getReserveOutletHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_ReserveOutletHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getOverflowHeight <em>Overflow Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overflow Height</em>'.
	 * @see org.roofspring.site.Tank#getOverflowHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_OverflowHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getInletHeight <em>Inlet Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inlet Height</em>'.
	 * @see org.roofspring.site.Tank#getInletHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_InletHeight();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Tank#getLevelVolume <em>Level Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Level Volume</em>'.
	 * @see org.roofspring.site.Tank#getLevelVolume()
	 * @see #getTank()
	 * @generated
	 */
	EReference getTank_LevelVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getStartHeight <em>Start Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Start Height</em>'.
	 * @see org.roofspring.site.Tank#getStartHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_StartHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getStopHeight <em>Stop Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stop Height</em>'.
	 * @see org.roofspring.site.Tank#getStopHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_StopHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getCurrentHeight <em>Current Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current Height</em>'.
	 * @see org.roofspring.site.Tank#getCurrentHeight()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_CurrentHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getCurrentDate <em>Current Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Current Date</em>'.
	 * @see org.roofspring.site.Tank#getCurrentDate()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_CurrentDate();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getPlaceInGround <em>Place In Ground</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place In Ground</em>'.
	 * @see org.roofspring.site.Tank#getPlaceInGround()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_PlaceInGround();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getCover <em>Cover</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cover</em>'.
	 * @see org.roofspring.site.Tank#getCover()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Cover();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see org.roofspring.site.Tank#getMaterial()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.roofspring.site.Tank#getDiameter()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.roofspring.site.Tank#getLength()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.roofspring.site.Tank#getWidth()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getOpenArea <em>Open Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Area</em>'.
	 * @see org.roofspring.site.Tank#getOpenArea()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_OpenArea();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getEvaporationFactor <em>Evaporation Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Evaporation Factor</em>'.
	 * @see org.roofspring.site.Tank#getEvaporationFactor()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_EvaporationFactor();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getLeakage <em>Leakage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Leakage</em>'.
	 * @see org.roofspring.site.Tank#getLeakage()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_Leakage();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getOverflowDiameter <em>Overflow Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Overflow Diameter</em>'.
	 * @see org.roofspring.site.Tank#getOverflowDiameter()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_OverflowDiameter();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Tank#getOverflowsTo <em>Overflows To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Overflows To</em>'.
	 * @see org.roofspring.site.Tank#getOverflowsTo()
	 * @see #getTank()
	 * @generated
	 */
	EReference getTank_OverflowsTo();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getVentArea <em>Vent Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vent Area</em>'.
	 * @see org.roofspring.site.Tank#getVentArea()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_VentArea();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getScreenMesh <em>Screen Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Screen Mesh</em>'.
	 * @see org.roofspring.site.Tank#getScreenMesh()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_ScreenMesh();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#isFloatingIntake <em>Floating Intake</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Floating Intake</em>'.
	 * @see org.roofspring.site.Tank#isFloatingIntake()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_FloatingIntake();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#isCalmedInlet <em>Calmed Inlet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calmed Inlet</em>'.
	 * @see org.roofspring.site.Tank#isCalmedInlet()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_CalmedInlet();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#isLockedHatch <em>Locked Hatch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locked Hatch</em>'.
	 * @see org.roofspring.site.Tank#isLockedHatch()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_LockedHatch();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tank#getLastCleaned <em>Last Cleaned</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Cleaned</em>'.
	 * @see org.roofspring.site.Tank#getLastCleaned()
	 * @see #getTank()
	 * @generated
	 */
	EAttribute getTank_LastCleaned();

	/**
	 * Returns the meta object for the containment reference '{@link org.roofspring.site.Tank#getSiting <em>Siting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Siting</em>'.
	 * @see org.roofspring.site.Tank#getSiting()
	 * @see #getTank()
	 * @generated
	 */
	EReference getTank_Siting();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.LevelVolumePoint <em>Level Volume Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Level Volume Point</em>'.
	 * @see org.roofspring.site.LevelVolumePoint
	 * @generated
	 */
	EClass getLevelVolumePoint();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.LevelVolumePoint#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.roofspring.site.LevelVolumePoint#getHeight()
	 * @see #getLevelVolumePoint()
	 * @generated
	 */
	EAttribute getLevelVolumePoint_Height();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.LevelVolumePoint#getVolume <em>Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volume</em>'.
	 * @see org.roofspring.site.LevelVolumePoint#getVolume()
	 * @see #getLevelVolumePoint()
	 * @generated
	 */
	EAttribute getLevelVolumePoint_Volume();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Siting <em>Siting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Siting</em>'.
	 * @see org.roofspring.site.Siting
	 * @generated
	 */
	EClass getSiting();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getLatrineDistance <em>Latrine Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latrine Distance</em>'.
	 * @see org.roofspring.site.Siting#getLatrineDistance()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_LatrineDistance();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#isLatrineUphill <em>Latrine Uphill</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latrine Uphill</em>'.
	 * @see org.roofspring.site.Siting#isLatrineUphill()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_LatrineUphill();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getRefuseDistance <em>Refuse Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Refuse Distance</em>'.
	 * @see org.roofspring.site.Siting#getRefuseDistance()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_RefuseDistance();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getGroundwaterDepth <em>Groundwater Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Groundwater Depth</em>'.
	 * @see org.roofspring.site.Siting#getGroundwaterDepth()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_GroundwaterDepth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getBurialDepth <em>Burial Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Burial Depth</em>'.
	 * @see org.roofspring.site.Siting#getBurialDepth()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_BurialDepth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getBaseArea <em>Base Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base Area</em>'.
	 * @see org.roofspring.site.Siting#getBaseArea()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_BaseArea();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getEmptyMass <em>Empty Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Empty Mass</em>'.
	 * @see org.roofspring.site.Siting#getEmptyMass()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_EmptyMass();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getSoilCover <em>Soil Cover</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soil Cover</em>'.
	 * @see org.roofspring.site.Siting#getSoilCover()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_SoilCover();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getAllowedBearing <em>Allowed Bearing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Allowed Bearing</em>'.
	 * @see org.roofspring.site.Siting#getAllowedBearing()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_AllowedBearing();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getStandHeight <em>Stand Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stand Height</em>'.
	 * @see org.roofspring.site.Siting#getStandHeight()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_StandHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getFoundationDistance <em>Foundation Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Foundation Distance</em>'.
	 * @see org.roofspring.site.Siting#getFoundationDistance()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_FoundationDistance();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#isSoakaway <em>Soakaway</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soakaway</em>'.
	 * @see org.roofspring.site.Siting#isSoakaway()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_Soakaway();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getSoakawayLength <em>Soakaway Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soakaway Length</em>'.
	 * @see org.roofspring.site.Siting#getSoakawayLength()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_SoakawayLength();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getSoakawayWidth <em>Soakaway Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soakaway Width</em>'.
	 * @see org.roofspring.site.Siting#getSoakawayWidth()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_SoakawayWidth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getSoakawayDepth <em>Soakaway Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soakaway Depth</em>'.
	 * @see org.roofspring.site.Siting#getSoakawayDepth()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_SoakawayDepth();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getSoakawayVoids <em>Soakaway Voids</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Soakaway Voids</em>'.
	 * @see org.roofspring.site.Siting#getSoakawayVoids()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_SoakawayVoids();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getInfiltration <em>Infiltration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Infiltration</em>'.
	 * @see org.roofspring.site.Siting#getInfiltration()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_Infiltration();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Siting#getTapDrain <em>Tap Drain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tap Drain</em>'.
	 * @see org.roofspring.site.Siting#getTapDrain()
	 * @see #getSiting()
	 * @generated
	 */
	EAttribute getSiting_TapDrain();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.TankLink <em>Tank Link</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Tank Link</em>'.
	 * @see org.roofspring.site.TankLink
	 * @generated
	 */
	EClass getTankLink();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TankLink#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.TankLink#getKind()
	 * @see #getTankLink()
	 * @generated
	 */
	EAttribute getTankLink_Kind();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.TankLink#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>From</em>'.
	 * @see org.roofspring.site.TankLink#getFrom()
	 * @see #getTankLink()
	 * @generated
	 */
	EReference getTankLink_From();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.TankLink#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>To</em>'.
	 * @see org.roofspring.site.TankLink#getTo()
	 * @see #getTankLink()
	 * @generated
	 */
	EReference getTankLink_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TankLink#getSillHeight <em>Sill Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sill Height</em>'.
	 * @see org.roofspring.site.TankLink#getSillHeight()
	 * @see #getTankLink()
	 * @generated
	 */
	EAttribute getTankLink_SillHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TankLink#getMaxFlow <em>Max Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Flow</em>'.
	 * @see org.roofspring.site.TankLink#getMaxFlow()
	 * @see #getTankLink()
	 * @generated
	 */
	EAttribute getTankLink_MaxFlow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TankLink#getDailyVolume <em>Daily Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Daily Volume</em>'.
	 * @see org.roofspring.site.TankLink#getDailyVolume()
	 * @see #getTankLink()
	 * @generated
	 */
	EAttribute getTankLink_DailyVolume();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Junction <em>Junction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Junction</em>'.
	 * @see org.roofspring.site.Junction
	 * @generated
	 */
	EClass getJunction();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Junction#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.Junction#getLevel()
	 * @see #getJunction()
	 * @generated
	 */
	EAttribute getJunction_Level();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PipeRun <em>Pipe Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pipe Run</em>'.
	 * @see org.roofspring.site.PipeRun
	 * @generated
	 */
	EClass getPipeRun();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.roofspring.site.PipeRun#getUse()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_Use();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.PipeRun#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>From</em>'.
	 * @see org.roofspring.site.PipeRun#getFrom()
	 * @see #getPipeRun()
	 * @generated
	 */
	EReference getPipeRun_From();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.PipeRun#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>To</em>'.
	 * @see org.roofspring.site.PipeRun#getTo()
	 * @see #getPipeRun()
	 * @generated
	 */
	EReference getPipeRun_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getBore <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bore</em>'.
	 * @see org.roofspring.site.PipeRun#getBore()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_Bore();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.roofspring.site.PipeRun#getLength()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see org.roofspring.site.PipeRun#getMaterial()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getWallThickness <em>Wall Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wall Thickness</em>'.
	 * @see org.roofspring.site.PipeRun#getWallThickness()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_WallThickness();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getClosureTime <em>Closure Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Closure Time</em>'.
	 * @see org.roofspring.site.PipeRun#getClosureTime()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_ClosureTime();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getPressureClass <em>Pressure Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pressure Class</em>'.
	 * @see org.roofspring.site.PipeRun#getPressureClass()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_PressureClass();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getRoughness <em>Roughness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Roughness</em>'.
	 * @see org.roofspring.site.PipeRun#getRoughness()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_Roughness();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PipeRun#getAgedRoughness <em>Aged Roughness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Aged Roughness</em>'.
	 * @see org.roofspring.site.PipeRun#getAgedRoughness()
	 * @see #getPipeRun()
	 * @generated
	 */
	EAttribute getPipeRun_AgedRoughness();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.PipeRun#getFittings <em>Fittings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Fittings</em>'.
	 * @see org.roofspring.site.PipeRun#getFittings()
	 * @see #getPipeRun()
	 * @generated
	 */
	EReference getPipeRun_Fittings();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.PipeRun#getProfile <em>Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Profile</em>'.
	 * @see org.roofspring.site.PipeRun#getProfile()
	 * @see #getPipeRun()
	 * @generated
	 */
	EReference getPipeRun_Profile();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Fitting <em>Fitting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fitting</em>'.
	 * @see org.roofspring.site.Fitting
	 * @generated
	 */
	EClass getFitting();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Fitting#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Fitting#getKind()
	 * @see #getFitting()
	 * @generated
	 */
	EAttribute getFitting_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Fitting#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.roofspring.site.Fitting#getCount()
	 * @see #getFitting()
	 * @generated
	 */
	EAttribute getFitting_Count();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Fitting#getLossCoefficient <em>Loss Coefficient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Loss Coefficient</em>'.
	 * @see org.roofspring.site.Fitting#getLossCoefficient()
	 * @see #getFitting()
	 * @generated
	 */
	EAttribute getFitting_LossCoefficient();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.ProfilePoint <em>Profile Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Profile Point</em>'.
	 * @see org.roofspring.site.ProfilePoint
	 * @generated
	 */
	EClass getProfilePoint();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ProfilePoint#getDistance <em>Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distance</em>'.
	 * @see org.roofspring.site.ProfilePoint#getDistance()
	 * @see #getProfilePoint()
	 * @generated
	 */
	EAttribute getProfilePoint_Distance();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ProfilePoint#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.ProfilePoint#getLevel()
	 * @see #getProfilePoint()
	 * @generated
	 */
	EAttribute getProfilePoint_Level();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PumpData <em>Pump Data</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pump Data</em>'.
	 * @see org.roofspring.site.PumpData
	 * @generated
	 */
	EClass getPumpData();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.PumpData#getPoints <em>Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Points</em>'.
	 * @see org.roofspring.site.PumpData#getPoints()
	 * @see #getPumpData()
	 * @generated
	 */
	EReference getPumpData_Points();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getMotorEfficiency <em>Motor Efficiency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Motor Efficiency</em>'.
	 * @see org.roofspring.site.PumpData#getMotorEfficiency()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_MotorEfficiency();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getRatedSpeed <em>Rated Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Speed</em>'.
	 * @see org.roofspring.site.PumpData#getRatedSpeed()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_RatedSpeed();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getRatedPower <em>Rated Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Power</em>'.
	 * @see org.roofspring.site.PumpData#getRatedPower()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_RatedPower();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getDischargeBore <em>Discharge Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Discharge Bore</em>'.
	 * @see org.roofspring.site.PumpData#getDischargeBore()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_DischargeBore();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getMinSubmergence <em>Min Submergence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Min Submergence</em>'.
	 * @see org.roofspring.site.PumpData#getMinSubmergence()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_MinSubmergence();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getMaxStarts <em>Max Starts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Starts</em>'.
	 * @see org.roofspring.site.PumpData#getMaxStarts()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_MaxStarts();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.roofspring.site.PumpData#getPrice()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_Price();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpData#getDataSource <em>Data Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Data Source</em>'.
	 * @see org.roofspring.site.PumpData#getDataSource()
	 * @see #getPumpData()
	 * @generated
	 */
	EAttribute getPumpData_DataSource();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PumpPoint <em>Pump Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pump Point</em>'.
	 * @see org.roofspring.site.PumpPoint
	 * @generated
	 */
	EClass getPumpPoint();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpPoint#getFlow <em>Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Flow</em>'.
	 * @see org.roofspring.site.PumpPoint#getFlow()
	 * @see #getPumpPoint()
	 * @generated
	 */
	EAttribute getPumpPoint_Flow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpPoint#getHead <em>Head</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head</em>'.
	 * @see org.roofspring.site.PumpPoint#getHead()
	 * @see #getPumpPoint()
	 * @generated
	 */
	EAttribute getPumpPoint_Head();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpPoint#getEfficiency <em>Efficiency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Efficiency</em>'.
	 * @see org.roofspring.site.PumpPoint#getEfficiency()
	 * @see #getPumpPoint()
	 * @generated
	 */
	EAttribute getPumpPoint_Efficiency();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpPoint#getNpshRequired <em>Npsh Required</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Npsh Required</em>'.
	 * @see org.roofspring.site.PumpPoint#getNpshRequired()
	 * @see #getPumpPoint()
	 * @generated
	 */
	EAttribute getPumpPoint_NpshRequired();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpPoint#getInputPower <em>Input Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Input Power</em>'.
	 * @see org.roofspring.site.PumpPoint#getInputPower()
	 * @see #getPumpPoint()
	 * @generated
	 */
	EAttribute getPumpPoint_InputPower();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Pump <em>Pump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pump</em>'.
	 * @see org.roofspring.site.Pump
	 * @generated
	 */
	EClass getPump();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Pump#getKind()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.roofspring.site.Pump#getCount()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_Count();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getArrangement <em>Arrangement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Arrangement</em>'.
	 * @see org.roofspring.site.Pump#getArrangement()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_Arrangement();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.Pump#getLevel()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_Level();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getSpeedRatio <em>Speed Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Speed Ratio</em>'.
	 * @see org.roofspring.site.Pump#getSpeedRatio()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_SpeedRatio();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getCutOutHeight <em>Cut Out Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cut Out Height</em>'.
	 * @see org.roofspring.site.Pump#getCutOutHeight()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_CutOutHeight();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#isFootValve <em>Foot Valve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Foot Valve</em>'.
	 * @see org.roofspring.site.Pump#isFootValve()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_FootValve();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getEnergySource <em>Energy Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Energy Source</em>'.
	 * @see org.roofspring.site.Pump#getEnergySource()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_EnergySource();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Pump#getSupplyTimes <em>Supply Times</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Supply Times</em>'.
	 * @see org.roofspring.site.Pump#getSupplyTimes()
	 * @see #getPump()
	 * @generated
	 */
	EReference getPump_SupplyTimes();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getOutageShare <em>Outage Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outage Share</em>'.
	 * @see org.roofspring.site.Pump#getOutageShare()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_OutageShare();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getStrokeVolume <em>Stroke Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stroke Volume</em>'.
	 * @see org.roofspring.site.Pump#getStrokeVolume()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_StrokeVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Pump#getStrokesPerMinute <em>Strokes Per Minute</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strokes Per Minute</em>'.
	 * @see org.roofspring.site.Pump#getStrokesPerMinute()
	 * @see #getPump()
	 * @generated
	 */
	EAttribute getPump_StrokesPerMinute();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Pump#getCandidates <em>Candidates</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Candidates</em>'.
	 * @see org.roofspring.site.Pump#getCandidates()
	 * @see #getPump()
	 * @generated
	 */
	EReference getPump_Candidates();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PumpCandidate <em>Pump Candidate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pump Candidate</em>'.
	 * @see org.roofspring.site.PumpCandidate
	 * @generated
	 */
	EClass getPumpCandidate();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpCandidate#getModel <em>Model</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Model</em>'.
	 * @see org.roofspring.site.PumpCandidate#getModel()
	 * @see #getPumpCandidate()
	 * @generated
	 */
	EAttribute getPumpCandidate_Model();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PumpCandidate#isChosen <em>Chosen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chosen</em>'.
	 * @see org.roofspring.site.PumpCandidate#isChosen()
	 * @see #getPumpCandidate()
	 * @generated
	 */
	EAttribute getPumpCandidate_Chosen();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.SupplyTime <em>Supply Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Supply Time</em>'.
	 * @see org.roofspring.site.SupplyTime
	 * @generated
	 */
	EClass getSupplyTime();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SupplyTime#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.SupplyTime#getFrom()
	 * @see #getSupplyTime()
	 * @generated
	 */
	EAttribute getSupplyTime_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SupplyTime#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.SupplyTime#getTo()
	 * @see #getSupplyTime()
	 * @generated
	 */
	EAttribute getSupplyTime_To();

	/**
	 * Returns the meta object for the attribute list '{@link org.roofspring.site.SupplyTime#getWeekdays <em>Weekdays</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Weekdays</em>'.
	 * @see org.roofspring.site.SupplyTime#getWeekdays()
	 * @see #getSupplyTime()
	 * @generated
	 */
	EAttribute getSupplyTime_Weekdays();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PressureVessel <em>Pressure Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pressure Vessel</em>'.
	 * @see org.roofspring.site.PressureVessel
	 * @generated
	 */
	EClass getPressureVessel();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PressureVessel#getVolume <em>Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volume</em>'.
	 * @see org.roofspring.site.PressureVessel#getVolume()
	 * @see #getPressureVessel()
	 * @generated
	 */
	EAttribute getPressureVessel_Volume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PressureVessel#getPrecharge <em>Precharge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Precharge</em>'.
	 * @see org.roofspring.site.PressureVessel#getPrecharge()
	 * @see #getPressureVessel()
	 * @generated
	 */
	EAttribute getPressureVessel_Precharge();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PressureVessel#getCutIn <em>Cut In</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cut In</em>'.
	 * @see org.roofspring.site.PressureVessel#getCutIn()
	 * @see #getPressureVessel()
	 * @generated
	 */
	EAttribute getPressureVessel_CutIn();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PressureVessel#getCutOut <em>Cut Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cut Out</em>'.
	 * @see org.roofspring.site.PressureVessel#getCutOut()
	 * @see #getPressureVessel()
	 * @generated
	 */
	EAttribute getPressureVessel_CutOut();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PressureVessel#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.PressureVessel#getLevel()
	 * @see #getPressureVessel()
	 * @generated
	 */
	EAttribute getPressureVessel_Level();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Tap <em>Tap</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Tap</em>'.
	 * @see org.roofspring.site.Tap
	 * @generated
	 */
	EClass getTap();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Tap#getKind()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.Tap#getLevel()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_Level();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getMinimumHead <em>Minimum Head</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minimum Head</em>'.
	 * @see org.roofspring.site.Tap#getMinimumHead()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_MinimumHead();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getDesignFlow <em>Design Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Flow</em>'.
	 * @see org.roofspring.site.Tap#getDesignFlow()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_DesignFlow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getOrifice <em>Orifice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Orifice</em>'.
	 * @see org.roofspring.site.Tap#getOrifice()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_Orifice();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getLossCoefficient <em>Loss Coefficient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Loss Coefficient</em>'.
	 * @see org.roofspring.site.Tap#getLossCoefficient()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_LossCoefficient();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.roofspring.site.Tap#getCount()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_Count();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getOpenTogether <em>Open Together</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Open Together</em>'.
	 * @see org.roofspring.site.Tap#getOpenTogether()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_OpenTogether();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Tap#getWalkingDistance <em>Walking Distance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Walking Distance</em>'.
	 * @see org.roofspring.site.Tap#getWalkingDistance()
	 * @see #getTap()
	 * @generated
	 */
	EAttribute getTap_WalkingDistance();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.UseCalendar <em>Use Calendar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Use Calendar</em>'.
	 * @see org.roofspring.site.UseCalendar
	 * @generated
	 */
	EClass getUseCalendar();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.UseCalendar#getPeriods <em>Periods</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Periods</em>'.
	 * @see org.roofspring.site.UseCalendar#getPeriods()
	 * @see #getUseCalendar()
	 * @generated
	 */
	EReference getUseCalendar_Periods();

	/**
	 * Returns the meta object for the attribute list '{@link org.roofspring.site.UseCalendar#getWeekdays <em>Weekdays</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Weekdays</em>'.
	 * @see org.roofspring.site.UseCalendar#getWeekdays()
	 * @see #getUseCalendar()
	 * @generated
	 */
	EAttribute getUseCalendar_Weekdays();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.UseCalendar#getHolidays <em>Holidays</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Holidays</em>'.
	 * @see org.roofspring.site.UseCalendar#getHolidays()
	 * @see #getUseCalendar()
	 * @generated
	 */
	EReference getUseCalendar_Holidays();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.UsePeriod <em>Use Period</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Use Period</em>'.
	 * @see org.roofspring.site.UsePeriod
	 * @generated
	 */
	EClass getUsePeriod();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeriod#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.roofspring.site.UsePeriod#getName()
	 * @see #getUsePeriod()
	 * @generated
	 */
	EAttribute getUsePeriod_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeriod#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.UsePeriod#getFrom()
	 * @see #getUsePeriod()
	 * @generated
	 */
	EAttribute getUsePeriod_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeriod#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.UsePeriod#getTo()
	 * @see #getUsePeriod()
	 * @generated
	 */
	EAttribute getUsePeriod_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeriod#getFactor <em>Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Factor</em>'.
	 * @see org.roofspring.site.UsePeriod#getFactor()
	 * @see #getUsePeriod()
	 * @generated
	 */
	EAttribute getUsePeriod_Factor();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Holiday <em>Holiday</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Holiday</em>'.
	 * @see org.roofspring.site.Holiday
	 * @generated
	 */
	EClass getHoliday();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Holiday#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.roofspring.site.Holiday#getName()
	 * @see #getHoliday()
	 * @generated
	 */
	EAttribute getHoliday_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Holiday#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.Holiday#getFrom()
	 * @see #getHoliday()
	 * @generated
	 */
	EAttribute getHoliday_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Holiday#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.Holiday#getTo()
	 * @see #getHoliday()
	 * @generated
	 */
	EAttribute getHoliday_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Holiday#getFactor <em>Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Factor</em>'.
	 * @see org.roofspring.site.Holiday#getFactor()
	 * @see #getHoliday()
	 * @generated
	 */
	EAttribute getHoliday_Factor();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Use <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Use</em>'.
	 * @see org.roofspring.site.Use
	 * @generated
	 */
	EClass getUse();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#getPurpose <em>Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Purpose</em>'.
	 * @see org.roofspring.site.Use#getPurpose()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_Purpose();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#getConsumers <em>Consumers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Consumers</em>'.
	 * @see org.roofspring.site.Use#getConsumers()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_Consumers();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.roofspring.site.Use#getCount()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_Count();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#getAmountEach <em>Amount Each</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount Each</em>'.
	 * @see org.roofspring.site.Use#getAmountEach()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_AmountEach();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#getPriority <em>Priority</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Priority</em>'.
	 * @see org.roofspring.site.Use#getPriority()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_Priority();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#isVulnerable <em>Vulnerable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vulnerable</em>'.
	 * @see org.roofspring.site.Use#isVulnerable()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_Vulnerable();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Use#getCalendar <em>Calendar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Calendar</em>'.
	 * @see org.roofspring.site.Use#getCalendar()
	 * @see #getUse()
	 * @generated
	 */
	EReference getUse_Calendar();

	/**
	 * Returns the meta object for the reference list '{@link org.roofspring.site.Use#getTaps <em>Taps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Taps</em>'.
	 * @see org.roofspring.site.Use#getTaps()
	 * @see #getUse()
	 * @generated
	 */
	EReference getUse_Taps();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Use#getTank <em>Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Tank</em>'.
	 * @see org.roofspring.site.Use#getTank()
	 * @see #getUse()
	 * @generated
	 */
	EReference getUse_Tank();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Use#getTrain <em>Train</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Train</em>'.
	 * @see org.roofspring.site.Use#getTrain()
	 * @see #getUse()
	 * @generated
	 */
	EReference getUse_Train();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Use#getPeaks <em>Peaks</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Peaks</em>'.
	 * @see org.roofspring.site.Use#getPeaks()
	 * @see #getUse()
	 * @generated
	 */
	EReference getUse_Peaks();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Use#isContainers <em>Containers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Containers</em>'.
	 * @see org.roofspring.site.Use#isContainers()
	 * @see #getUse()
	 * @generated
	 */
	EAttribute getUse_Containers();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.UsePeak <em>Use Peak</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Use Peak</em>'.
	 * @see org.roofspring.site.UsePeak
	 * @generated
	 */
	EClass getUsePeak();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeak#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.UsePeak#getFrom()
	 * @see #getUsePeak()
	 * @generated
	 */
	EAttribute getUsePeak_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeak#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.UsePeak#getTo()
	 * @see #getUsePeak()
	 * @generated
	 */
	EAttribute getUsePeak_To();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UsePeak#getShare <em>Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Share</em>'.
	 * @see org.roofspring.site.UsePeak#getShare()
	 * @see #getUsePeak()
	 * @generated
	 */
	EAttribute getUsePeak_Share();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.RationingRule <em>Rationing Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rationing Rule</em>'.
	 * @see org.roofspring.site.RationingRule
	 * @generated
	 */
	EClass getRationingRule();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.RationingRule#getTank <em>Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Tank</em>'.
	 * @see org.roofspring.site.RationingRule#getTank()
	 * @see #getRationingRule()
	 * @generated
	 */
	EReference getRationingRule_Tank();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RationingRule#getBelow <em>Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Below</em>'.
	 * @see org.roofspring.site.RationingRule#getBelow()
	 * @see #getRationingRule()
	 * @generated
	 */
	EAttribute getRationingRule_Below();

	/**
	 * Returns the meta object for the reference list '{@link org.roofspring.site.RationingRule#getUses <em>Uses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Uses</em>'.
	 * @see org.roofspring.site.RationingRule#getUses()
	 * @see #getRationingRule()
	 * @generated
	 */
	EReference getRationingRule_Uses();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RationingRule#getAllowed <em>Allowed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Allowed</em>'.
	 * @see org.roofspring.site.RationingRule#getAllowed()
	 * @see #getRationingRule()
	 * @generated
	 */
	EAttribute getRationingRule_Allowed();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RationingRule#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.RationingRule#getFrom()
	 * @see #getRationingRule()
	 * @generated
	 */
	EAttribute getRationingRule_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RationingRule#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.RationingRule#getTo()
	 * @see #getRationingRule()
	 * @generated
	 */
	EAttribute getRationingRule_To();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.TopUp <em>Top Up</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Top Up</em>'.
	 * @see org.roofspring.site.TopUp
	 * @generated
	 */
	EClass getTopUp();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TopUp#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.roofspring.site.TopUp#getSource()
	 * @see #getTopUp()
	 * @generated
	 */
	EAttribute getTopUp_Source();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.TopUp#getTank <em>Tank</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Tank</em>'.
	 * @see org.roofspring.site.TopUp#getTank()
	 * @see #getTopUp()
	 * @generated
	 */
	EReference getTopUp_Tank();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TopUp#getLoad <em>Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Load</em>'.
	 * @see org.roofspring.site.TopUp#getLoad()
	 * @see #getTopUp()
	 * @generated
	 */
	EAttribute getTopUp_Load();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TopUp#getOrderBelow <em>Order Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Order Below</em>'.
	 * @see org.roofspring.site.TopUp#getOrderBelow()
	 * @see #getTopUp()
	 * @generated
	 */
	EAttribute getTopUp_OrderBelow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TopUp#getDelay <em>Delay</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Delay</em>'.
	 * @see org.roofspring.site.TopUp#getDelay()
	 * @see #getTopUp()
	 * @generated
	 */
	EAttribute getTopUp_Delay();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TopUp#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.roofspring.site.TopUp#getPrice()
	 * @see #getTopUp()
	 * @generated
	 */
	EAttribute getTopUp_Price();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TopUp#getMostPerYear <em>Most Per Year</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Most Per Year</em>'.
	 * @see org.roofspring.site.TopUp#getMostPerYear()
	 * @see #getTopUp()
	 * @generated
	 */
	EAttribute getTopUp_MostPerYear();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.RawWater <em>Raw Water</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Raw Water</em>'.
	 * @see org.roofspring.site.RawWater
	 * @generated
	 */
	EClass getRawWater();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RawWater#isTested <em>Tested</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tested</em>'.
	 * @see org.roofspring.site.RawWater#isTested()
	 * @see #getRawWater()
	 * @generated
	 */
	EAttribute getRawWater_Tested();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RawWater#getTurbidity <em>Turbidity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Turbidity</em>'.
	 * @see org.roofspring.site.RawWater#getTurbidity()
	 * @see #getRawWater()
	 * @generated
	 */
	EAttribute getRawWater_Turbidity();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RawWater#getPh <em>Ph</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ph</em>'.
	 * @see org.roofspring.site.RawWater#getPh()
	 * @see #getRawWater()
	 * @generated
	 */
	EAttribute getRawWater_Ph();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RawWater#getAlkalinity <em>Alkalinity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Alkalinity</em>'.
	 * @see org.roofspring.site.RawWater#getAlkalinity()
	 * @see #getRawWater()
	 * @generated
	 */
	EAttribute getRawWater_Alkalinity();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RawWater#getChlorineDemand <em>Chlorine Demand</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Chlorine Demand</em>'.
	 * @see org.roofspring.site.RawWater#getChlorineDemand()
	 * @see #getRawWater()
	 * @generated
	 */
	EAttribute getRawWater_ChlorineDemand();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.RawWater#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.roofspring.site.RawWater#getSource()
	 * @see #getRawWater()
	 * @generated
	 */
	EAttribute getRawWater_Source();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.RawWater#getPathogens <em>Pathogens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pathogens</em>'.
	 * @see org.roofspring.site.RawWater#getPathogens()
	 * @see #getRawWater()
	 * @generated
	 */
	EReference getRawWater_Pathogens();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.PathogenLevel <em>Pathogen Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Pathogen Level</em>'.
	 * @see org.roofspring.site.PathogenLevel
	 * @generated
	 */
	EClass getPathogenLevel();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PathogenLevel#getGroup <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group</em>'.
	 * @see org.roofspring.site.PathogenLevel#getGroup()
	 * @see #getPathogenLevel()
	 * @generated
	 */
	EAttribute getPathogenLevel_Group();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PathogenLevel#getPathogen <em>Pathogen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pathogen</em>'.
	 * @see org.roofspring.site.PathogenLevel#getPathogen()
	 * @see #getPathogenLevel()
	 * @generated
	 */
	EAttribute getPathogenLevel_Pathogen();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PathogenLevel#getPerLitre <em>Per Litre</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Per Litre</em>'.
	 * @see org.roofspring.site.PathogenLevel#getPerLitre()
	 * @see #getPathogenLevel()
	 * @generated
	 */
	EAttribute getPathogenLevel_PerLitre();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PathogenLevel#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see org.roofspring.site.PathogenLevel#getLow()
	 * @see #getPathogenLevel()
	 * @generated
	 */
	EAttribute getPathogenLevel_Low();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PathogenLevel#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see org.roofspring.site.PathogenLevel#getHigh()
	 * @see #getPathogenLevel()
	 * @generated
	 */
	EAttribute getPathogenLevel_High();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.PathogenLevel#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.roofspring.site.PathogenLevel#getSource()
	 * @see #getPathogenLevel()
	 * @generated
	 */
	EAttribute getPathogenLevel_Source();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.TreatmentTrain <em>Treatment Train</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Treatment Train</em>'.
	 * @see org.roofspring.site.TreatmentTrain
	 * @generated
	 */
	EClass getTreatmentTrain();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentTrain#getLevel <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Level</em>'.
	 * @see org.roofspring.site.TreatmentTrain#getLevel()
	 * @see #getTreatmentTrain()
	 * @generated
	 */
	EAttribute getTreatmentTrain_Level();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentTrain#getDesignFlow <em>Design Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Design Flow</em>'.
	 * @see org.roofspring.site.TreatmentTrain#getDesignFlow()
	 * @see #getTreatmentTrain()
	 * @generated
	 */
	EAttribute getTreatmentTrain_DesignFlow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentTrain#isBatch <em>Batch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Batch</em>'.
	 * @see org.roofspring.site.TreatmentTrain#isBatch()
	 * @see #getTreatmentTrain()
	 * @generated
	 */
	EAttribute getTreatmentTrain_Batch();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.TreatmentTrain#getSteps <em>Steps</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Steps</em>'.
	 * @see org.roofspring.site.TreatmentTrain#getSteps()
	 * @see #getTreatmentTrain()
	 * @generated
	 */
	EReference getTreatmentTrain_Steps();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.TreatmentStep <em>Treatment Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Treatment Step</em>'.
	 * @see org.roofspring.site.TreatmentStep
	 * @generated
	 */
	EClass getTreatmentStep();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.TreatmentStep#getKind()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#isActive <em>Active</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Active</em>'.
	 * @see org.roofspring.site.TreatmentStep#isActive()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Active();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getRating <em>Rating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rating</em>'.
	 * @see org.roofspring.site.TreatmentStep#getRating()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Rating();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getRatingBasis <em>Rating Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rating Basis</em>'.
	 * @see org.roofspring.site.TreatmentStep#getRatingBasis()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_RatingBasis();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.TreatmentStep#getReductions <em>Reductions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Reductions</em>'.
	 * @see org.roofspring.site.TreatmentStep#getReductions()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EReference getTreatmentStep_Reductions();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getAvailability <em>Availability</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Availability</em>'.
	 * @see org.roofspring.site.TreatmentStep#getAvailability()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Availability();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getMaxFlow <em>Max Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Flow</em>'.
	 * @see org.roofspring.site.TreatmentStep#getMaxFlow()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_MaxFlow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getHeadLossClean <em>Head Loss Clean</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Loss Clean</em>'.
	 * @see org.roofspring.site.TreatmentStep#getHeadLossClean()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_HeadLossClean();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getHeadLossFouled <em>Head Loss Fouled</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Head Loss Fouled</em>'.
	 * @see org.roofspring.site.TreatmentStep#getHeadLossFouled()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_HeadLossFouled();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getReferenceFlow <em>Reference Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reference Flow</em>'.
	 * @see org.roofspring.site.TreatmentStep#getReferenceFlow()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ReferenceFlow();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getChangeInterval <em>Change Interval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Change Interval</em>'.
	 * @see org.roofspring.site.TreatmentStep#getChangeInterval()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ChangeInterval();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getChangeVolume <em>Change Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Change Volume</em>'.
	 * @see org.roofspring.site.TreatmentStep#getChangeVolume()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ChangeVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getChangeCost <em>Change Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Change Cost</em>'.
	 * @see org.roofspring.site.TreatmentStep#getChangeCost()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ChangeCost();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getLastChanged <em>Last Changed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Changed</em>'.
	 * @see org.roofspring.site.TreatmentStep#getLastChanged()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_LastChanged();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getMaxTurbidity <em>Max Turbidity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Max Turbidity</em>'.
	 * @see org.roofspring.site.TreatmentStep#getMaxTurbidity()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_MaxTurbidity();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getEnergySource <em>Energy Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Energy Source</em>'.
	 * @see org.roofspring.site.TreatmentStep#getEnergySource()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_EnergySource();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getPower <em>Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Power</em>'.
	 * @see org.roofspring.site.TreatmentStep#getPower()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Power();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getUvDose <em>Uv Dose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Uv Dose</em>'.
	 * @see org.roofspring.site.TreatmentStep#getUvDose()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_UvDose();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#isValidated <em>Validated</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Validated</em>'.
	 * @see org.roofspring.site.TreatmentStep#isValidated()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Validated();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getProduct <em>Product</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Product</em>'.
	 * @see org.roofspring.site.TreatmentStep#getProduct()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Product();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getStrength <em>Strength</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strength</em>'.
	 * @see org.roofspring.site.TreatmentStep#getStrength()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Strength();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getStrengthBasis <em>Strength Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strength Basis</em>'.
	 * @see org.roofspring.site.TreatmentStep#getStrengthBasis()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_StrengthBasis();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getProductDensity <em>Product Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Product Density</em>'.
	 * @see org.roofspring.site.TreatmentStep#getProductDensity()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ProductDensity();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getProductAge <em>Product Age</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Product Age</em>'.
	 * @see org.roofspring.site.TreatmentStep#getProductAge()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ProductAge();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getDose <em>Dose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dose</em>'.
	 * @see org.roofspring.site.TreatmentStep#getDose()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Dose();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getResidual <em>Residual</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Residual</em>'.
	 * @see org.roofspring.site.TreatmentStep#getResidual()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Residual();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getResidualDate <em>Residual Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Residual Date</em>'.
	 * @see org.roofspring.site.TreatmentStep#getResidualDate()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ResidualDate();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getContactVolume <em>Contact Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact Volume</em>'.
	 * @see org.roofspring.site.TreatmentStep#getContactVolume()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ContactVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getContactTime <em>Contact Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contact Time</em>'.
	 * @see org.roofspring.site.TreatmentStep#getContactTime()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_ContactTime();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getBaffling <em>Baffling</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Baffling</em>'.
	 * @see org.roofspring.site.TreatmentStep#getBaffling()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_Baffling();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.TreatmentStep#getBatchVolume <em>Batch Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Batch Volume</em>'.
	 * @see org.roofspring.site.TreatmentStep#getBatchVolume()
	 * @see #getTreatmentStep()
	 * @generated
	 */
	EAttribute getTreatmentStep_BatchVolume();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.LogReduction <em>Log Reduction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Log Reduction</em>'.
	 * @see org.roofspring.site.LogReduction
	 * @generated
	 */
	EClass getLogReduction();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.LogReduction#getGroup <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group</em>'.
	 * @see org.roofspring.site.LogReduction#getGroup()
	 * @see #getLogReduction()
	 * @generated
	 */
	EAttribute getLogReduction_Group();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.LogReduction#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see org.roofspring.site.LogReduction#getLow()
	 * @see #getLogReduction()
	 * @generated
	 */
	EAttribute getLogReduction_Low();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.LogReduction#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see org.roofspring.site.LogReduction#getHigh()
	 * @see #getLogReduction()
	 * @generated
	 */
	EAttribute getLogReduction_High();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.LogReduction#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.roofspring.site.LogReduction#getSource()
	 * @see #getLogReduction()
	 * @generated
	 */
	EAttribute getLogReduction_Source();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.CostItem <em>Cost Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cost Item</em>'.
	 * @see org.roofspring.site.CostItem
	 * @generated
	 */
	EClass getCostItem();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getCategory <em>Category</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Category</em>'.
	 * @see org.roofspring.site.CostItem#getCategory()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Category();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getAmount <em>Amount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount</em>'.
	 * @see org.roofspring.site.CostItem#getAmount()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Amount();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.roofspring.site.CostItem#getQuantity()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.roofspring.site.CostItem#getUnit()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Unit();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.CostItem#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.CostItem#getElement()
	 * @see #getCostItem()
	 * @generated
	 */
	EReference getCostItem_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getFirstYear <em>First Year</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>First Year</em>'.
	 * @see org.roofspring.site.CostItem#getFirstYear()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_FirstYear();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getInterval <em>Interval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Interval</em>'.
	 * @see org.roofspring.site.CostItem#getInterval()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Interval();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getLife <em>Life</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Life</em>'.
	 * @see org.roofspring.site.CostItem#getLife()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Life();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getYearlyChange <em>Yearly Change</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Yearly Change</em>'.
	 * @see org.roofspring.site.CostItem#getYearlyChange()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_YearlyChange();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CostItem#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Person</em>'.
	 * @see org.roofspring.site.CostItem#getPerson()
	 * @see #getCostItem()
	 * @generated
	 */
	EAttribute getCostItem_Person();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.AlternativeSupply <em>Alternative Supply</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Alternative Supply</em>'.
	 * @see org.roofspring.site.AlternativeSupply
	 * @generated
	 */
	EClass getAlternativeSupply();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getKind()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getPrice()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_Price();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getCapital <em>Capital</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capital</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getCapital()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_Capital();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getCapitalLife <em>Capital Life</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Capital Life</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getCapitalLife()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_CapitalLife();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getYearlyCost <em>Yearly Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Yearly Cost</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getYearlyCost()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_YearlyCost();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getEnergy <em>Energy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Energy</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getEnergy()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_Energy();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getReliability <em>Reliability</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reliability</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getReliability()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_Reliability();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.AlternativeSupply#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.roofspring.site.AlternativeSupply#getSource()
	 * @see #getAlternativeSupply()
	 * @generated
	 */
	EAttribute getAlternativeSupply_Source();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Economy <em>Economy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Economy</em>'.
	 * @see org.roofspring.site.Economy
	 * @generated
	 */
	EClass getEconomy();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getBasis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Basis</em>'.
	 * @see org.roofspring.site.Economy#getBasis()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_Basis();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getDiscountRate <em>Discount Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Discount Rate</em>'.
	 * @see org.roofspring.site.Economy#getDiscountRate()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_DiscountRate();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getInflation <em>Inflation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inflation</em>'.
	 * @see org.roofspring.site.Economy#getInflation()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_Inflation();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getHorizon <em>Horizon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Horizon</em>'.
	 * @see org.roofspring.site.Economy#getHorizon()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_Horizon();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getBaseYear <em>Base Year</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Base Year</em>'.
	 * @see org.roofspring.site.Economy#getBaseYear()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_BaseYear();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getEnergyPrice <em>Energy Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Energy Price</em>'.
	 * @see org.roofspring.site.Economy#getEnergyPrice()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_EnergyPrice();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getLabourPrice <em>Labour Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Labour Price</em>'.
	 * @see org.roofspring.site.Economy#getLabourPrice()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_LabourPrice();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getTariff <em>Tariff</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tariff</em>'.
	 * @see org.roofspring.site.Economy#getTariff()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_Tariff();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Economy#getPeople <em>People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>People</em>'.
	 * @see org.roofspring.site.Economy#getPeople()
	 * @see #getEconomy()
	 * @generated
	 */
	EAttribute getEconomy_People();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Option <em>Option</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Option</em>'.
	 * @see org.roofspring.site.Option
	 * @generated
	 */
	EClass getOption();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Option#isActive <em>Active</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Active</em>'.
	 * @see org.roofspring.site.Option#isActive()
	 * @see #getOption()
	 * @generated
	 */
	EAttribute getOption_Active();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Option#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see org.roofspring.site.Option#getReason()
	 * @see #getOption()
	 * @generated
	 */
	EAttribute getOption_Reason();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Option#getChanges <em>Changes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Changes</em>'.
	 * @see org.roofspring.site.Option#getChanges()
	 * @see #getOption()
	 * @generated
	 */
	EReference getOption_Changes();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Stage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stage</em>'.
	 * @see org.roofspring.site.Stage
	 * @generated
	 */
	EClass getStage();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Stage#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.roofspring.site.Stage#getDate()
	 * @see #getStage()
	 * @generated
	 */
	EAttribute getStage_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Stage#getBudget <em>Budget</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Budget</em>'.
	 * @see org.roofspring.site.Stage#getBudget()
	 * @see #getStage()
	 * @generated
	 */
	EAttribute getStage_Budget();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Change <em>Change</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Change</em>'.
	 * @see org.roofspring.site.Change
	 * @generated
	 */
	EClass getChange();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Change#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.Change#getElement()
	 * @see #getChange()
	 * @generated
	 */
	EReference getChange_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Change#getFeature <em>Feature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feature</em>'.
	 * @see org.roofspring.site.Change#getFeature()
	 * @see #getChange()
	 * @generated
	 */
	EAttribute getChange_Feature();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Change#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.roofspring.site.Change#getValue()
	 * @see #getChange()
	 * @generated
	 */
	EAttribute getChange_Value();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.UpkeepTask <em>Upkeep Task</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Upkeep Task</em>'.
	 * @see org.roofspring.site.UpkeepTask
	 * @generated
	 */
	EClass getUpkeepTask();

	/**
	 * Returns the meta object for the reference list '{@link org.roofspring.site.UpkeepTask#getElements <em>Elements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Elements</em>'.
	 * @see org.roofspring.site.UpkeepTask#getElements()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EReference getUpkeepTask_Elements();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getInterval <em>Interval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Interval</em>'.
	 * @see org.roofspring.site.UpkeepTask#getInterval()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Interval();

	/**
	 * Returns the meta object for the attribute list '{@link org.roofspring.site.UpkeepTask#getDueOn <em>Due On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Due On</em>'.
	 * @see org.roofspring.site.UpkeepTask#getDueOn()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_DueOn();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getAfterVolume <em>After Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>After Volume</em>'.
	 * @see org.roofspring.site.UpkeepTask#getAfterVolume()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_AfterVolume();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#isBeforeFirstRain <em>Before First Rain</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Before First Rain</em>'.
	 * @see org.roofspring.site.UpkeepTask#isBeforeFirstRain()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_BeforeFirstRain();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getLastDone <em>Last Done</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Done</em>'.
	 * @see org.roofspring.site.UpkeepTask#getLastDone()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_LastDone();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getEffort <em>Effort</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Effort</em>'.
	 * @see org.roofspring.site.UpkeepTask#getEffort()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Effort();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getCost <em>Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Cost</em>'.
	 * @see org.roofspring.site.UpkeepTask#getCost()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Cost();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.roofspring.site.UpkeepTask#getWho()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Who();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getChecklist <em>Checklist</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Checklist</em>'.
	 * @see org.roofspring.site.UpkeepTask#getChecklist()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Checklist();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getSpares <em>Spares</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Spares</em>'.
	 * @see org.roofspring.site.UpkeepTask#getSpares()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Spares();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.roofspring.site.UpkeepTask#getSource()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Source();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.UpkeepTask#getHazard <em>Hazard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hazard</em>'.
	 * @see org.roofspring.site.UpkeepTask#getHazard()
	 * @see #getUpkeepTask()
	 * @generated
	 */
	EAttribute getUpkeepTask_Hazard();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.SafetyMeasure <em>Safety Measure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Safety Measure</em>'.
	 * @see org.roofspring.site.SafetyMeasure
	 * @generated
	 */
	EClass getSafetyMeasure();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.SafetyMeasure#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getElement()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EReference getSafetyMeasure_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SafetyMeasure#getHazard <em>Hazard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hazard</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getHazard()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EAttribute getSafetyMeasure_Hazard();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SafetyMeasure#getControl <em>Control</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Control</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getControl()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EAttribute getSafetyMeasure_Control();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SafetyMeasure#getLimit <em>Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limit</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getLimit()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EAttribute getSafetyMeasure_Limit();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SafetyMeasure#getCheck <em>Check</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Check</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getCheck()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EAttribute getSafetyMeasure_Check();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SafetyMeasure#getAction <em>Action</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Action</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getAction()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EAttribute getSafetyMeasure_Action();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SafetyMeasure#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.roofspring.site.SafetyMeasure#getWho()
	 * @see #getSafetyMeasure()
	 * @generated
	 */
	EAttribute getSafetyMeasure_Who();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Inspection <em>Inspection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Inspection</em>'.
	 * @see org.roofspring.site.Inspection
	 * @generated
	 */
	EClass getInspection();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Inspection#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.roofspring.site.Inspection#getDate()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Inspection#getInspector <em>Inspector</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inspector</em>'.
	 * @see org.roofspring.site.Inspection#getInspector()
	 * @see #getInspection()
	 * @generated
	 */
	EAttribute getInspection_Inspector();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Inspection#getAnswers <em>Answers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Answers</em>'.
	 * @see org.roofspring.site.Inspection#getAnswers()
	 * @see #getInspection()
	 * @generated
	 */
	EReference getInspection_Answers();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.InspectionAnswer <em>Inspection Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Inspection Answer</em>'.
	 * @see org.roofspring.site.InspectionAnswer
	 * @generated
	 */
	EClass getInspectionAnswer();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.InspectionAnswer#getQuestion <em>Question</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Question</em>'.
	 * @see org.roofspring.site.InspectionAnswer#getQuestion()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_Question();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.InspectionAnswer#getAnswer <em>Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Answer</em>'.
	 * @see org.roofspring.site.InspectionAnswer#getAnswer()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_Answer();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.InspectionAnswer#getRemark <em>Remark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remark</em>'.
	 * @see org.roofspring.site.InspectionAnswer#getRemark()
	 * @see #getInspectionAnswer()
	 * @generated
	 */
	EAttribute getInspectionAnswer_Remark();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reading</em>'.
	 * @see org.roofspring.site.Reading
	 * @generated
	 */
	EClass getReading();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Reading#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.roofspring.site.Reading#getDate()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Reading#getTime <em>Time</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time</em>'.
	 * @see org.roofspring.site.Reading#getTime()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Time();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Reading#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Reading#getKind()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Reading#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.roofspring.site.Reading#getValue()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Value();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Reading#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.Reading#getElement()
	 * @see #getReading()
	 * @generated
	 */
	EReference getReading_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Reading#getReader <em>Reader</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reader</em>'.
	 * @see org.roofspring.site.Reading#getReader()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Reader();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.WaterTest <em>Water Test</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Water Test</em>'.
	 * @see org.roofspring.site.WaterTest
	 * @generated
	 */
	EClass getWaterTest();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.roofspring.site.WaterTest#getDate()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getParameter <em>Parameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Parameter</em>'.
	 * @see org.roofspring.site.WaterTest#getParameter()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Parameter();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.roofspring.site.WaterTest#getValue()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Value();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#isBelowDetection <em>Below Detection</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Below Detection</em>'.
	 * @see org.roofspring.site.WaterTest#isBelowDetection()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_BelowDetection();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see org.roofspring.site.WaterTest#getUnit()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Unit();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getLimit <em>Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limit</em>'.
	 * @see org.roofspring.site.WaterTest#getLimit()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Limit();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getLimitSource <em>Limit Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limit Source</em>'.
	 * @see org.roofspring.site.WaterTest#getLimitSource()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_LimitSource();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getLaboratory <em>Laboratory</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Laboratory</em>'.
	 * @see org.roofspring.site.WaterTest#getLaboratory()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Laboratory();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.WaterTest#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.WaterTest#getElement()
	 * @see #getWaterTest()
	 * @generated
	 */
	EReference getWaterTest_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.WaterTest#getAction <em>Action</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Action</em>'.
	 * @see org.roofspring.site.WaterTest#getAction()
	 * @see #getWaterTest()
	 * @generated
	 */
	EAttribute getWaterTest_Action();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Incident <em>Incident</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Incident</em>'.
	 * @see org.roofspring.site.Incident
	 * @generated
	 */
	EClass getIncident();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Incident#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Incident#getKind()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Incident#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.roofspring.site.Incident#getFrom()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_From();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Incident#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.roofspring.site.Incident#getTo()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_To();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Incident#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.Incident#getElement()
	 * @see #getIncident()
	 * @generated
	 */
	EReference getIncident_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Incident#getVolumeLost <em>Volume Lost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volume Lost</em>'.
	 * @see org.roofspring.site.Incident#getVolumeLost()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_VolumeLost();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Incident#getAction <em>Action</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Action</em>'.
	 * @see org.roofspring.site.Incident#getAction()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_Action();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.SharedScheme <em>Shared Scheme</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shared Scheme</em>'.
	 * @see org.roofspring.site.SharedScheme
	 * @generated
	 */
	EClass getSharedScheme();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SharedScheme#getFamilies <em>Families</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Families</em>'.
	 * @see org.roofspring.site.SharedScheme#getFamilies()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EAttribute getSharedScheme_Families();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SharedScheme#getPeoplePerFamily <em>People Per Family</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>People Per Family</em>'.
	 * @see org.roofspring.site.SharedScheme#getPeoplePerFamily()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EAttribute getSharedScheme_PeoplePerFamily();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SharedScheme#getKeyHolder <em>Key Holder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key Holder</em>'.
	 * @see org.roofspring.site.SharedScheme#getKeyHolder()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EAttribute getSharedScheme_KeyHolder();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SharedScheme#getRation <em>Ration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ration</em>'.
	 * @see org.roofspring.site.SharedScheme#getRation()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EAttribute getSharedScheme_Ration();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SharedScheme#getMonthlyFee <em>Monthly Fee</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Monthly Fee</em>'.
	 * @see org.roofspring.site.SharedScheme#getMonthlyFee()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EAttribute getSharedScheme_MonthlyFee();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.SharedScheme#getNightLoss <em>Night Loss</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Night Loss</em>'.
	 * @see org.roofspring.site.SharedScheme#getNightLoss()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EAttribute getSharedScheme_NightLoss();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.SharedScheme#getCashBook <em>Cash Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Cash Book</em>'.
	 * @see org.roofspring.site.SharedScheme#getCashBook()
	 * @see #getSharedScheme()
	 * @generated
	 */
	EReference getSharedScheme_CashBook();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.CashEntry <em>Cash Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cash Entry</em>'.
	 * @see org.roofspring.site.CashEntry
	 * @generated
	 */
	EClass getCashEntry();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CashEntry#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.roofspring.site.CashEntry#getDate()
	 * @see #getCashEntry()
	 * @generated
	 */
	EAttribute getCashEntry_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CashEntry#getAmount <em>Amount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Amount</em>'.
	 * @see org.roofspring.site.CashEntry#getAmount()
	 * @see #getCashEntry()
	 * @generated
	 */
	EAttribute getCashEntry_Amount();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CashEntry#getWhat <em>What</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>What</em>'.
	 * @see org.roofspring.site.CashEntry#getWhat()
	 * @see #getCashEntry()
	 * @generated
	 */
	EAttribute getCashEntry_What();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.CashEntry#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see org.roofspring.site.CashEntry#getWho()
	 * @see #getCashEntry()
	 * @generated
	 */
	EAttribute getCashEntry_Who();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.Remark <em>Remark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Remark</em>'.
	 * @see org.roofspring.site.Remark
	 * @generated
	 */
	EClass getRemark();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.roofspring.site.Remark#getKind()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Kind();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.Remark#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.Remark#getElement()
	 * @see #getRemark()
	 * @generated
	 */
	EReference getRemark_Element();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#getAuthor <em>Author</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Author</em>'.
	 * @see org.roofspring.site.Remark#getAuthor()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Author();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see org.roofspring.site.Remark#getRole()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Role();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.roofspring.site.Remark#getDate()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.roofspring.site.Remark#getText()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Text();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#getFingerprint <em>Fingerprint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fingerprint</em>'.
	 * @see org.roofspring.site.Remark#getFingerprint()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Fingerprint();

	/**
	 * Returns the meta object for the attribute list '{@link org.roofspring.site.Remark#getRestsOn <em>Rests On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Rests On</em>'.
	 * @see org.roofspring.site.Remark#getRestsOn()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_RestsOn();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.Remark#isSettled <em>Settled</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Settled</em>'.
	 * @see org.roofspring.site.Remark#isSettled()
	 * @see #getRemark()
	 * @generated
	 */
	EAttribute getRemark_Settled();

	/**
	 * Returns the meta object for the containment reference list '{@link org.roofspring.site.Remark#getReplies <em>Replies</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Replies</em>'.
	 * @see org.roofspring.site.Remark#getReplies()
	 * @see #getRemark()
	 * @generated
	 */
	EReference getRemark_Replies();

	/**
	 * Returns the meta object for class '{@link org.roofspring.site.ExtensionEntry <em>Extension Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Extension Entry</em>'.
	 * @see org.roofspring.site.ExtensionEntry
	 * @generated
	 */
	EClass getExtensionEntry();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ExtensionEntry#getPlugin <em>Plugin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plugin</em>'.
	 * @see org.roofspring.site.ExtensionEntry#getPlugin()
	 * @see #getExtensionEntry()
	 * @generated
	 */
	EAttribute getExtensionEntry_Plugin();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ExtensionEntry#getSchema <em>Schema</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Schema</em>'.
	 * @see org.roofspring.site.ExtensionEntry#getSchema()
	 * @see #getExtensionEntry()
	 * @generated
	 */
	EAttribute getExtensionEntry_Schema();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ExtensionEntry#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see org.roofspring.site.ExtensionEntry#getKey()
	 * @see #getExtensionEntry()
	 * @generated
	 */
	EAttribute getExtensionEntry_Key();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ExtensionEntry#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.roofspring.site.ExtensionEntry#getType()
	 * @see #getExtensionEntry()
	 * @generated
	 */
	EAttribute getExtensionEntry_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.roofspring.site.ExtensionEntry#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.roofspring.site.ExtensionEntry#getValue()
	 * @see #getExtensionEntry()
	 * @generated
	 */
	EAttribute getExtensionEntry_Value();

	/**
	 * Returns the meta object for the reference '{@link org.roofspring.site.ExtensionEntry#getElement <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Element</em>'.
	 * @see org.roofspring.site.ExtensionEntry#getElement()
	 * @see #getExtensionEntry()
	 * @generated
	 */
	EReference getExtensionEntry_Element();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.RainFormat <em>Rain Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Rain Format</em>'.
	 * @see org.roofspring.site.RainFormat
	 * @generated
	 */
	EEnum getRainFormat();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.DepthUnit <em>Depth Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Depth Unit</em>'.
	 * @see org.roofspring.site.DepthUnit
	 * @generated
	 */
	EEnum getDepthUnit();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.GapMethod <em>Gap Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Gap Method</em>'.
	 * @see org.roofspring.site.GapMethod
	 * @generated
	 */
	EEnum getGapMethod();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.Weekday <em>Weekday</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Weekday</em>'.
	 * @see org.roofspring.site.Weekday
	 * @generated
	 */
	EEnum getWeekday();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.RoofMaterial <em>Roof Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Roof Material</em>'.
	 * @see org.roofspring.site.RoofMaterial
	 * @generated
	 */
	EEnum getRoofMaterial();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.RunoffBasis <em>Runoff Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Runoff Basis</em>'.
	 * @see org.roofspring.site.RunoffBasis
	 * @generated
	 */
	EEnum getRunoffBasis();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.Hazard <em>Hazard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hazard</em>'.
	 * @see org.roofspring.site.Hazard
	 * @generated
	 */
	EEnum getHazard();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.GutterProfile <em>Gutter Profile</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Gutter Profile</em>'.
	 * @see org.roofspring.site.GutterProfile
	 * @generated
	 */
	EEnum getGutterProfile();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.OutletShape <em>Outlet Shape</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Outlet Shape</em>'.
	 * @see org.roofspring.site.OutletShape
	 * @generated
	 */
	EEnum getOutletShape();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.TankKind <em>Tank Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tank Kind</em>'.
	 * @see org.roofspring.site.TankKind
	 * @generated
	 */
	EEnum getTankKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.TankMaterial <em>Tank Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tank Material</em>'.
	 * @see org.roofspring.site.TankMaterial
	 * @generated
	 */
	EEnum getTankMaterial();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.TankCover <em>Tank Cover</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tank Cover</em>'.
	 * @see org.roofspring.site.TankCover
	 * @generated
	 */
	EEnum getTankCover();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.PlaceInGround <em>Place In Ground</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Place In Ground</em>'.
	 * @see org.roofspring.site.PlaceInGround
	 * @generated
	 */
	EEnum getPlaceInGround();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.TankLinkKind <em>Tank Link Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tank Link Kind</em>'.
	 * @see org.roofspring.site.TankLinkKind
	 * @generated
	 */
	EEnum getTankLinkKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.RunUse <em>Run Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Run Use</em>'.
	 * @see org.roofspring.site.RunUse
	 * @generated
	 */
	EEnum getRunUse();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.PipeMaterial <em>Pipe Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pipe Material</em>'.
	 * @see org.roofspring.site.PipeMaterial
	 * @generated
	 */
	EEnum getPipeMaterial();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.FittingKind <em>Fitting Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Fitting Kind</em>'.
	 * @see org.roofspring.site.FittingKind
	 * @generated
	 */
	EEnum getFittingKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.PumpKind <em>Pump Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pump Kind</em>'.
	 * @see org.roofspring.site.PumpKind
	 * @generated
	 */
	EEnum getPumpKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.PumpArrangement <em>Pump Arrangement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pump Arrangement</em>'.
	 * @see org.roofspring.site.PumpArrangement
	 * @generated
	 */
	EEnum getPumpArrangement();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.EnergySource <em>Energy Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Energy Source</em>'.
	 * @see org.roofspring.site.EnergySource
	 * @generated
	 */
	EEnum getEnergySource();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.TapKind <em>Tap Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Tap Kind</em>'.
	 * @see org.roofspring.site.TapKind
	 * @generated
	 */
	EEnum getTapKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.Purpose <em>Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Purpose</em>'.
	 * @see org.roofspring.site.Purpose
	 * @generated
	 */
	EEnum getPurpose();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.DisinfectantProduct <em>Disinfectant Product</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Disinfectant Product</em>'.
	 * @see org.roofspring.site.DisinfectantProduct
	 * @generated
	 */
	EEnum getDisinfectantProduct();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.StrengthBasis <em>Strength Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Strength Basis</em>'.
	 * @see org.roofspring.site.StrengthBasis
	 * @generated
	 */
	EEnum getStrengthBasis();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.StepKind <em>Step Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Step Kind</em>'.
	 * @see org.roofspring.site.StepKind
	 * @generated
	 */
	EEnum getStepKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.RatingBasis <em>Rating Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Rating Basis</em>'.
	 * @see org.roofspring.site.RatingBasis
	 * @generated
	 */
	EEnum getRatingBasis();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.PathogenGroup <em>Pathogen Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Pathogen Group</em>'.
	 * @see org.roofspring.site.PathogenGroup
	 * @generated
	 */
	EEnum getPathogenGroup();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.CostCategory <em>Cost Category</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cost Category</em>'.
	 * @see org.roofspring.site.CostCategory
	 * @generated
	 */
	EEnum getCostCategory();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.SupplyKind <em>Supply Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Supply Kind</em>'.
	 * @see org.roofspring.site.SupplyKind
	 * @generated
	 */
	EEnum getSupplyKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.PriceBasis <em>Price Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Price Basis</em>'.
	 * @see org.roofspring.site.PriceBasis
	 * @generated
	 */
	EEnum getPriceBasis();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.ReadingKind <em>Reading Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Reading Kind</em>'.
	 * @see org.roofspring.site.ReadingKind
	 * @generated
	 */
	EEnum getReadingKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.WaterParameter <em>Water Parameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Water Parameter</em>'.
	 * @see org.roofspring.site.WaterParameter
	 * @generated
	 */
	EEnum getWaterParameter();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.IncidentKind <em>Incident Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Incident Kind</em>'.
	 * @see org.roofspring.site.IncidentKind
	 * @generated
	 */
	EEnum getIncidentKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.RemarkKind <em>Remark Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Remark Kind</em>'.
	 * @see org.roofspring.site.RemarkKind
	 * @generated
	 */
	EEnum getRemarkKind();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.ValueType <em>Value Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Value Type</em>'.
	 * @see org.roofspring.site.ValueType
	 * @generated
	 */
	EEnum getValueType();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.UnitPreference <em>Unit Preference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Unit Preference</em>'.
	 * @see org.roofspring.site.UnitPreference
	 * @generated
	 */
	EEnum getUnitPreference();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.TopUpSource <em>Top Up Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Top Up Source</em>'.
	 * @see org.roofspring.site.TopUpSource
	 * @generated
	 */
	EEnum getTopUpSource();

	/**
	 * Returns the meta object for enum '{@link org.roofspring.site.CheckAnswer <em>Check Answer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Check Answer</em>'.
	 * @see org.roofspring.site.CheckAnswer
	 * @generated
	 */
	EEnum getCheckAnswer();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A length or height. Usual unit m.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Length</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LENGTH).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LENGTH).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='LENGTH' unit='m'"
	 * @generated
	 */
	EDataType getLength();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A height above (or, negative, below) the datum of the site. Usual unit m.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Level</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LEVEL).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.LEVEL).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='LENGTH' unit='m'"
	 * @generated
	 */
	EDataType getLevel();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Bore</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A small length such as the inside diameter of a pipe, a wall thickness or a gutter width. Usual unit mm.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Bore</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.BORE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.BORE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='LENGTH' unit='mm'"
	 * @generated
	 */
	EDataType getBore();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Rain Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A depth of rain or of water lost from a surface. Usual unit mm.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Rain Depth</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RAIN_DEPTH).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RAIN_DEPTH).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='LENGTH' unit='mm'"
	 * @generated
	 */
	EDataType getRainDepth();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Particle Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A particle size, such as the rating of a filter. Usual unit um.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Particle Size</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PARTICLE_SIZE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PARTICLE_SIZE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='LENGTH' unit='um'"
	 * @generated
	 */
	EDataType getParticleSize();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Head</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A head of water: energy for each weight of water. Usual unit m.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Head</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HEAD).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HEAD).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='LENGTH' unit='m'"
	 * @generated
	 */
	EDataType getHead();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An area of roof or ground. Usual unit m2.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Area</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.AREA).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.AREA).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='AREA' unit='m2'"
	 * @generated
	 */
	EDataType getArea();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Opening Area</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An area of a small opening, such as a vent. Usual unit cm2.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Opening Area</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.OPENING_AREA).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.OPENING_AREA).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='AREA' unit='cm2'"
	 * @generated
	 */
	EDataType getOpeningArea();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A volume of water stored or used. Usual unit m3.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Volume</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VOLUME).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VOLUME).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='VOLUME' unit='m3'"
	 * @generated
	 */
	EDataType getVolume();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Small Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A small volume, such as a first flush or a pressure vessel. Usual unit L.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Small Volume</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SMALL_VOLUME).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SMALL_VOLUME).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='VOLUME' unit='L'"
	 * @generated
	 */
	EDataType getSmallVolume();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A flow in a pipe, gutter or pump. Usual unit L/s.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Flow</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.FLOW).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.FLOW).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='FLOW' unit='L/s'"
	 * @generated
	 */
	EDataType getFlow();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Tap Flow</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A flow at a tap, filter or diverter. Usual unit L/min.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Tap Flow</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TAP_FLOW).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TAP_FLOW).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='FLOW' unit='L/min'"
	 * @generated
	 */
	EDataType getTapFlow();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Daily Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A volume of water each day. Usual unit L/d.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Daily Volume</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAILY_VOLUME).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAILY_VOLUME).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='FLOW' unit='L/d'"
	 * @generated
	 */
	EDataType getDailyVolume();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Velocity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A speed. Usual unit m/s.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Velocity</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VELOCITY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.VELOCITY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='VELOCITY' unit='m/s'"
	 * @generated
	 */
	EDataType getVelocity();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A pressure above that of the air around. Usual unit kPa.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Pressure</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='PRESSURE' unit='kPa'"
	 * @generated
	 */
	EDataType getPressure();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Pressure Head</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A pressure given as metres of water; a bare m is read as metres of water. Usual unit m(head).
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Pressure Head</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE_HEAD).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.PRESSURE_HEAD).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='PRESSURE' unit='m(head)'"
	 * @generated
	 */
	EDataType getPressureHead();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Temperature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A temperature. Usual unit degC.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Temperature</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TEMPERATURE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TEMPERATURE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='TEMPERATURE' unit='degC'"
	 * @generated
	 */
	EDataType getTemperature();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Power</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A power. Usual unit W.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Power</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.POWER).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.POWER).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='POWER' unit='W'"
	 * @generated
	 */
	EDataType getPower();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Specific Energy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An energy for each volume of water. Usual unit kWh/m3.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Specific Energy</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SPECIFIC_ENERGY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SPECIFIC_ENERGY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='SPECIFIC_ENERGY' unit='kWh/m3'"
	 * @generated
	 */
	EDataType getSpecificEnergy();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Seconds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A few seconds. Usual unit s.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Seconds</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SECONDS).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SECONDS).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='DURATION' unit='s'"
	 * @generated
	 */
	EDataType getSeconds();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A short span of time. Usual unit min.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Minutes</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MINUTES).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MINUTES).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='DURATION' unit='min'"
	 * @generated
	 */
	EDataType getMinutes();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Hours</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A span of hours. Usual unit h.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Hours</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HOURS).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.HOURS).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='DURATION' unit='h'"
	 * @generated
	 */
	EDataType getHours();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A span of days. Usual unit d.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Days</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAYS).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAYS).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='DURATION' unit='d'"
	 * @generated
	 */
	EDataType getDays();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Years</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A span of years. Usual unit yr.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Years</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.YEARS).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.YEARS).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='DURATION' unit='yr'"
	 * @generated
	 */
	EDataType getYears();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Intensity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A rain intensity. Usual unit mm/h.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Intensity</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.INTENSITY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.INTENSITY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='INTENSITY' unit='mm/h'"
	 * @generated
	 */
	EDataType getIntensity();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Concentration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A mass of something in a volume of water. Usual unit mg/L.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Concentration</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.CONCENTRATION).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.CONCENTRATION).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='CONCENTRATION' unit='mg/L'"
	 * @generated
	 */
	EDataType getConcentration();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Uv Dose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A dose of ultraviolet light. Usual unit mJ/cm2.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Uv Dose</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UV_DOSE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UV_DOSE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='UV_DOSE' unit='mJ/cm2'"
	 * @generated
	 */
	EDataType getUvDose();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Turbidity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A turbidity. Usual unit NTU.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Turbidity</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TURBIDITY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TURBIDITY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='TURBIDITY' unit='NTU'"
	 * @generated
	 */
	EDataType getTurbidity();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A mass for each volume. Usual unit kg/L.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Density</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DENSITY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DENSITY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='DENSITY' unit='kg/L'"
	 * @generated
	 */
	EDataType getDensity();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A mass. Usual unit kg.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Mass</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MASS).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MASS).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='MASS' unit='kg'"
	 * @generated
	 */
	EDataType getMass();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Rotational Speed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A speed of rotation. Usual unit rpm.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Rotational Speed</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ROTATIONAL_SPEED).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ROTATIONAL_SPEED).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='ROTATION' unit='rpm'"
	 * @generated
	 */
	EDataType getRotationalSpeed();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Angle</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An angle. Usual unit deg.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Angle</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ANGLE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ANGLE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='ANGLE' unit='deg'"
	 * @generated
	 */
	EDataType getAngle();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Rate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A number of events in a time. Usual unit 1/yr.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Rate</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RATE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.RATE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='FREQUENCY' unit='1/yr'"
	 * @generated
	 */
	EDataType getRate();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Money</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * An amount in the currency of the site. Usual unit cur.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Money</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MONEY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MONEY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='MONEY' unit='cur'"
	 * @generated
	 */
	EDataType getMoney();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Unit Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A cost for each volume of water. Usual unit cur/m3.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Unit Cost</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UNIT_COST).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.UNIT_COST).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='UNIT_COST' unit='cur/m3'"
	 * @generated
	 */
	EDataType getUnitCost();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Energy Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A cost for each amount of energy. Usual unit cur/kWh.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Energy Cost</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ENERGY_COST).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.ENERGY_COST).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='ENERGY_COST' unit='cur/kWh'"
	 * @generated
	 */
	EDataType getEnergyCost();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Coefficient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A pure number.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Coefficient</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.COEFFICIENT).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.COEFFICIENT).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='RATIO' unit='1'"
	 * @generated
	 */
	EDataType getCoefficient();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A share of a whole, as 65 % or 0.65. Usual unit %.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Share</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SHARE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.SHARE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity dimension='RATIO' unit='%'"
	 * @generated
	 */
	EDataType getShare();

	/**
	 * Returns the meta object for data type '{@link org.roofspring.quantity.Quantity <em>Measurement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A measured value in any unit of the catalogue.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Measurement</em>'.
	 * @see org.roofspring.quantity.Quantity
	 * @model instanceClass="org.roofspring.quantity.Quantity"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (org.roofspring.quantity.Quantity) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MEASUREMENT).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.MEASUREMENT).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/quantity"
	 * @generated
	 */
	EDataType getMeasurement();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A calendar day, as 2024-03-31.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Date</em>'.
	 * @see java.time.LocalDate
	 * @model instanceClass="java.time.LocalDate"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (java.time.LocalDate) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DATE).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DATE).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/time kind='DATE'"
	 * @generated
	 */
	EDataType getDate();

	/**
	 * Returns the meta object for data type '{@link java.time.MonthDay <em>Day Of Year</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A day that comes every year, as 03-31 (month, day).
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Day Of Year</em>'.
	 * @see java.time.MonthDay
	 * @model instanceClass="java.time.MonthDay"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (java.time.MonthDay) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAY_OF_YEAR).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.DAY_OF_YEAR).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/time kind='DAY_OF_YEAR'"
	 * @generated
	 */
	EDataType getDayOfYear();

	/**
	 * Returns the meta object for data type '{@link java.time.LocalTime <em>Time Of Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A time of day, as 10:30.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Time Of Day</em>'.
	 * @see java.time.LocalTime
	 * @model instanceClass="java.time.LocalTime"
	 *        annotation="http://www.eclipse.org/emf/2002/GenModel create='return (java.time.LocalTime) org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TIME_OF_DAY).createFromString(it);' convert='return org.roofspring.site.internal.ValueText.of(SitePackage.Literals.TIME_OF_DAY).convertToString(it);'"
	 *        annotation="http://www.roofspring.org/time kind='TIME_OF_DAY'"
	 * @generated
	 */
	EDataType getTimeOfDay();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	SiteFactory getSiteFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each operation of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals
	{
		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RowImpl <em>Row</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RowImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRow()
		 * @generated
		 */
		EClass ROW = eINSTANCE.getRow();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ElementImpl <em>Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ElementImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getElement()
		 * @generated
		 */
		EClass ELEMENT = eINSTANCE.getElement();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELEMENT__ID = eINSTANCE.getElement_Id();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ELEMENT__NOTE = eINSTANCE.getElement_Note();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.NamedElementImpl <em>Named Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.NamedElementImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getNamedElement()
		 * @generated
		 */
		EClass NAMED_ELEMENT = eINSTANCE.getNamedElement();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED_ELEMENT__NAME = eINSTANCE.getNamedElement_Name();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ComponentImpl <em>Component</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ComponentImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getComponent()
		 * @generated
		 */
		EClass COMPONENT = eINSTANCE.getComponent();

		/**
		 * The meta object literal for the '<em><b>In Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPONENT__IN_USE = eINSTANCE.getComponent_InUse();

		/**
		 * The meta object literal for the '<em><b>Installed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPONENT__INSTALLED = eINSTANCE.getComponent_Installed();

		/**
		 * The meta object literal for the '<em><b>Drawing Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPONENT__DRAWING_PLACE = eINSTANCE.getComponent_DrawingPlace();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ReceiverImpl <em>Receiver</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ReceiverImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getReceiver()
		 * @generated
		 */
		EClass RECEIVER = eINSTANCE.getReceiver();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ConduitImpl <em>Conduit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ConduitImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getConduit()
		 * @generated
		 */
		EClass CONDUIT = eINSTANCE.getConduit();

		/**
		 * The meta object literal for the '<em><b>Drains To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDUIT__DRAINS_TO = eINSTANCE.getConduit_DrainsTo();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PipeNodeImpl <em>Pipe Node</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PipeNodeImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPipeNode()
		 * @generated
		 */
		EClass PIPE_NODE = eINSTANCE.getPipeNode();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.SiteImpl <em>Site</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.SiteImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSite()
		 * @generated
		 */
		EClass SITE = eINSTANCE.getSite();

		/**
		 * The meta object literal for the '<em><b>Schema Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__SCHEMA_VERSION = eINSTANCE.getSite_SchemaVersion();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__PLACE = eINSTANCE.getSite_Place();

		/**
		 * The meta object literal for the '<em><b>Latitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__LATITUDE = eINSTANCE.getSite_Latitude();

		/**
		 * The meta object literal for the '<em><b>Altitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__ALTITUDE = eINSTANCE.getSite_Altitude();

		/**
		 * The meta object literal for the '<em><b>Water Temperature Min</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__WATER_TEMPERATURE_MIN = eINSTANCE.getSite_WaterTemperatureMin();

		/**
		 * The meta object literal for the '<em><b>Water Temperature Usual</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__WATER_TEMPERATURE_USUAL = eINSTANCE.getSite_WaterTemperatureUsual();

		/**
		 * The meta object literal for the '<em><b>Water Temperature Max</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__WATER_TEMPERATURE_MAX = eINSTANCE.getSite_WaterTemperatureMax();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__CURRENCY = eINSTANCE.getSite_Currency();

		/**
		 * The meta object literal for the '<em><b>Preferred Units</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__PREFERRED_UNITS = eINSTANCE.getSite_PreferredUnits();

		/**
		 * The meta object literal for the '<em><b>Author</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__AUTHOR = eINSTANCE.getSite_Author();

		/**
		 * The meta object literal for the '<em><b>Client</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__CLIENT = eINSTANCE.getSite_Client();

		/**
		 * The meta object literal for the '<em><b>Created</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__CREATED = eINSTANCE.getSite_Created();

		/**
		 * The meta object literal for the '<em><b>Rain</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__RAIN = eINSTANCE.getSite_Rain();

		/**
		 * The meta object literal for the '<em><b>Target</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__TARGET = eINSTANCE.getSite_Target();

		/**
		 * The meta object literal for the '<em><b>Roofs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__ROOFS = eINSTANCE.getSite_Roofs();

		/**
		 * The meta object literal for the '<em><b>Gutters</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__GUTTERS = eINSTANCE.getSite_Gutters();

		/**
		 * The meta object literal for the '<em><b>Downpipes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__DOWNPIPES = eINSTANCE.getSite_Downpipes();

		/**
		 * The meta object literal for the '<em><b>Screens</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__SCREENS = eINSTANCE.getSite_Screens();

		/**
		 * The meta object literal for the '<em><b>Diverters</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__DIVERTERS = eINSTANCE.getSite_Diverters();

		/**
		 * The meta object literal for the '<em><b>Tanks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__TANKS = eINSTANCE.getSite_Tanks();

		/**
		 * The meta object literal for the '<em><b>Tank Links</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__TANK_LINKS = eINSTANCE.getSite_TankLinks();

		/**
		 * The meta object literal for the '<em><b>Junctions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__JUNCTIONS = eINSTANCE.getSite_Junctions();

		/**
		 * The meta object literal for the '<em><b>Pipe Runs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__PIPE_RUNS = eINSTANCE.getSite_PipeRuns();

		/**
		 * The meta object literal for the '<em><b>Pumps</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__PUMPS = eINSTANCE.getSite_Pumps();

		/**
		 * The meta object literal for the '<em><b>Pressure Vessels</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__PRESSURE_VESSELS = eINSTANCE.getSite_PressureVessels();

		/**
		 * The meta object literal for the '<em><b>Taps</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__TAPS = eINSTANCE.getSite_Taps();

		/**
		 * The meta object literal for the '<em><b>Calendars</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__CALENDARS = eINSTANCE.getSite_Calendars();

		/**
		 * The meta object literal for the '<em><b>Uses</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__USES = eINSTANCE.getSite_Uses();

		/**
		 * The meta object literal for the '<em><b>Rationing</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__RATIONING = eINSTANCE.getSite_Rationing();

		/**
		 * The meta object literal for the '<em><b>Top Ups</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__TOP_UPS = eINSTANCE.getSite_TopUps();

		/**
		 * The meta object literal for the '<em><b>Raw Water</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__RAW_WATER = eINSTANCE.getSite_RawWater();

		/**
		 * The meta object literal for the '<em><b>Trains</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__TRAINS = eINSTANCE.getSite_Trains();

		/**
		 * The meta object literal for the '<em><b>Costs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__COSTS = eINSTANCE.getSite_Costs();

		/**
		 * The meta object literal for the '<em><b>Alternatives</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__ALTERNATIVES = eINSTANCE.getSite_Alternatives();

		/**
		 * The meta object literal for the '<em><b>Economy</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__ECONOMY = eINSTANCE.getSite_Economy();

		/**
		 * The meta object literal for the '<em><b>Stages</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__STAGES = eINSTANCE.getSite_Stages();

		/**
		 * The meta object literal for the '<em><b>Options</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__OPTIONS = eINSTANCE.getSite_Options();

		/**
		 * The meta object literal for the '<em><b>Upkeep</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__UPKEEP = eINSTANCE.getSite_Upkeep();

		/**
		 * The meta object literal for the '<em><b>Safety Plan</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__SAFETY_PLAN = eINSTANCE.getSite_SafetyPlan();

		/**
		 * The meta object literal for the '<em><b>Inspections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__INSPECTIONS = eINSTANCE.getSite_Inspections();

		/**
		 * The meta object literal for the '<em><b>Readings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__READINGS = eINSTANCE.getSite_Readings();

		/**
		 * The meta object literal for the '<em><b>Water Tests</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__WATER_TESTS = eINSTANCE.getSite_WaterTests();

		/**
		 * The meta object literal for the '<em><b>Incidents</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__INCIDENTS = eINSTANCE.getSite_Incidents();

		/**
		 * The meta object literal for the '<em><b>Scheme</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__SCHEME = eINSTANCE.getSite_Scheme();

		/**
		 * The meta object literal for the '<em><b>Remarks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__REMARKS = eINSTANCE.getSite_Remarks();

		/**
		 * The meta object literal for the '<em><b>Extensions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__EXTENSIONS = eINSTANCE.getSite_Extensions();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TargetImpl <em>Target</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TargetImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTarget()
		 * @generated
		 */
		EClass TARGET = eINSTANCE.getTarget();

		/**
		 * The meta object literal for the '<em><b>Time Reliability</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__TIME_RELIABILITY = eINSTANCE.getTarget_TimeReliability();

		/**
		 * The meta object literal for the '<em><b>Volumetric Reliability</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__VOLUMETRIC_RELIABILITY = eINSTANCE.getTarget_VolumetricReliability();

		/**
		 * The meta object literal for the '<em><b>Longest Shortage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__LONGEST_SHORTAGE = eINSTANCE.getTarget_LongestShortage();

		/**
		 * The meta object literal for the '<em><b>Reserve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__RESERVE = eINSTANCE.getTarget_Reserve();

		/**
		 * The meta object literal for the '<em><b>Pump Outage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__PUMP_OUTAGE = eINSTANCE.getTarget_PumpOutage();

		/**
		 * The meta object literal for the '<em><b>Confidence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__CONFIDENCE = eINSTANCE.getTarget_Confidence();

		/**
		 * The meta object literal for the '<em><b>Budget</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__BUDGET = eINSTANCE.getTarget_Budget();

		/**
		 * The meta object literal for the '<em><b>Infection Target</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__INFECTION_TARGET = eINSTANCE.getTarget_InfectionTarget();

		/**
		 * The meta object literal for the '<em><b>Burden Target</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TARGET__BURDEN_TARGET = eINSTANCE.getTarget_BurdenTarget();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RainSourceImpl <em>Rain Source</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RainSourceImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRainSource()
		 * @generated
		 */
		EClass RAIN_SOURCE = eINSTANCE.getRainSource();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__FILE = eINSTANCE.getRainSource_File();

		/**
		 * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__FORMAT = eINSTANCE.getRainSource_Format();

		/**
		 * The meta object literal for the '<em><b>Date Column</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DATE_COLUMN = eINSTANCE.getRainSource_DateColumn();

		/**
		 * The meta object literal for the '<em><b>Depth Column</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DEPTH_COLUMN = eINSTANCE.getRainSource_DepthColumn();

		/**
		 * The meta object literal for the '<em><b>Date Pattern</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DATE_PATTERN = eINSTANCE.getRainSource_DatePattern();

		/**
		 * The meta object literal for the '<em><b>Delimiter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DELIMITER = eINSTANCE.getRainSource_Delimiter();

		/**
		 * The meta object literal for the '<em><b>Decimal Comma</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DECIMAL_COMMA = eINSTANCE.getRainSource_DecimalComma();

		/**
		 * The meta object literal for the '<em><b>Depth Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DEPTH_UNIT = eINSTANCE.getRainSource_DepthUnit();

		/**
		 * The meta object literal for the '<em><b>Gap Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__GAP_METHOD = eINSTANCE.getRainSource_GapMethod();

		/**
		 * The meta object literal for the '<em><b>First Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__FIRST_DAY = eINSTANCE.getRainSource_FirstDay();

		/**
		 * The meta object literal for the '<em><b>Last Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__LAST_DAY = eINSTANCE.getRainSource_LastDay();

		/**
		 * The meta object literal for the '<em><b>Station</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__STATION = eINSTANCE.getRainSource_Station();

		/**
		 * The meta object literal for the '<em><b>Station Altitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__STATION_ALTITUDE = eINSTANCE.getRainSource_StationAltitude();

		/**
		 * The meta object literal for the '<em><b>Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DISTANCE = eINSTANCE.getRainSource_Distance();

		/**
		 * The meta object literal for the '<em><b>Donor File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DONOR_FILE = eINSTANCE.getRainSource_DonorFile();

		/**
		 * The meta object literal for the '<em><b>Donor Station</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DONOR_STATION = eINSTANCE.getRainSource_DonorStation();

		/**
		 * The meta object literal for the '<em><b>Scale To Normals</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__SCALE_TO_NORMALS = eINSTANCE.getRainSource_ScaleToNormals();

		/**
		 * The meta object literal for the '<em><b>Normals</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAIN_SOURCE__NORMALS = eINSTANCE.getRainSource_Normals();

		/**
		 * The meta object literal for the '<em><b>Synthesize</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__SYNTHESIZE = eINSTANCE.getRainSource_Synthesize();

		/**
		 * The meta object literal for the '<em><b>Synthetic Years</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__SYNTHETIC_YEARS = eINSTANCE.getRainSource_SyntheticYears();

		/**
		 * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__SEED = eINSTANCE.getRainSource_Seed();

		/**
		 * The meta object literal for the '<em><b>Stress</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAIN_SOURCE__STRESS = eINSTANCE.getRainSource_Stress();

		/**
		 * The meta object literal for the '<em><b>Intensities</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAIN_SOURCE__INTENSITIES = eINSTANCE.getRainSource_Intensities();

		/**
		 * The meta object literal for the '<em><b>Return Period</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__RETURN_PERIOD = eINSTANCE.getRainSource_ReturnPeriod();

		/**
		 * The meta object literal for the '<em><b>Peak Duration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__PEAK_DURATION = eINSTANCE.getRainSource_PeakDuration();

		/**
		 * The meta object literal for the '<em><b>Day To Short Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DAY_TO_SHORT_RATIO = eINSTANCE.getRainSource_DayToShortRatio();

		/**
		 * The meta object literal for the '<em><b>Day Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAIN_SOURCE__DAY_FACTOR = eINSTANCE.getRainSource_DayFactor();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.MonthlyNormalImpl <em>Monthly Normal</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.MonthlyNormalImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMonthlyNormal()
		 * @generated
		 */
		EClass MONTHLY_NORMAL = eINSTANCE.getMonthlyNormal();

		/**
		 * The meta object literal for the '<em><b>Month</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MONTHLY_NORMAL__MONTH = eINSTANCE.getMonthlyNormal_Month();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MONTHLY_NORMAL__DEPTH = eINSTANCE.getMonthlyNormal_Depth();

		/**
		 * The meta object literal for the '<em><b>Wet Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MONTHLY_NORMAL__WET_DAYS = eINSTANCE.getMonthlyNormal_WetDays();

		/**
		 * The meta object literal for the '<em><b>Evaporation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MONTHLY_NORMAL__EVAPORATION = eINSTANCE.getMonthlyNormal_Evaporation();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ClimateStressImpl <em>Climate Stress</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ClimateStressImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getClimateStress()
		 * @generated
		 */
		EClass CLIMATE_STRESS = eINSTANCE.getClimateStress();

		/**
		 * The meta object literal for the '<em><b>Depth Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLIMATE_STRESS__DEPTH_FACTOR = eINSTANCE.getClimateStress_DepthFactor();

		/**
		 * The meta object literal for the '<em><b>Dry Season Longer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLIMATE_STRESS__DRY_SEASON_LONGER = eINSTANCE.getClimateStress_DrySeasonLonger();

		/**
		 * The meta object literal for the '<em><b>Seasons</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLIMATE_STRESS__SEASONS = eINSTANCE.getClimateStress_Seasons();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.SeasonFactorImpl <em>Season Factor</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.SeasonFactorImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSeasonFactor()
		 * @generated
		 */
		EClass SEASON_FACTOR = eINSTANCE.getSeasonFactor();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEASON_FACTOR__FROM = eINSTANCE.getSeasonFactor_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEASON_FACTOR__TO = eINSTANCE.getSeasonFactor_To();

		/**
		 * The meta object literal for the '<em><b>Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SEASON_FACTOR__FACTOR = eINSTANCE.getSeasonFactor_Factor();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.IntensityPointImpl <em>Intensity Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.IntensityPointImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIntensityPoint()
		 * @generated
		 */
		EClass INTENSITY_POINT = eINSTANCE.getIntensityPoint();

		/**
		 * The meta object literal for the '<em><b>Duration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INTENSITY_POINT__DURATION = eINSTANCE.getIntensityPoint_Duration();

		/**
		 * The meta object literal for the '<em><b>Return Period</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INTENSITY_POINT__RETURN_PERIOD = eINSTANCE.getIntensityPoint_ReturnPeriod();

		/**
		 * The meta object literal for the '<em><b>Intensity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INTENSITY_POINT__INTENSITY = eINSTANCE.getIntensityPoint_Intensity();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RoofImpl <em>Roof</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RoofImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRoof()
		 * @generated
		 */
		EClass ROOF = eINSTANCE.getRoof();

		/**
		 * The meta object literal for the '<em><b>Plan Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__PLAN_AREA = eINSTANCE.getRoof_PlanArea();

		/**
		 * The meta object literal for the '<em><b>Pitch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__PITCH = eINSTANCE.getRoof_Pitch();

		/**
		 * The meta object literal for the '<em><b>Eaves Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__EAVES_LENGTH = eINSTANCE.getRoof_EavesLength();

		/**
		 * The meta object literal for the '<em><b>Slope Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__SLOPE_HEIGHT = eINSTANCE.getRoof_SlopeHeight();

		/**
		 * The meta object literal for the '<em><b>Eaves Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__EAVES_LEVEL = eINSTANCE.getRoof_EavesLevel();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__MATERIAL = eINSTANCE.getRoof_Material();

		/**
		 * The meta object literal for the '<em><b>Runoff Coefficient</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__RUNOFF_COEFFICIENT = eINSTANCE.getRoof_RunoffCoefficient();

		/**
		 * The meta object literal for the '<em><b>Runoff Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__RUNOFF_BASIS = eINSTANCE.getRoof_RunoffBasis();

		/**
		 * The meta object literal for the '<em><b>Initial Loss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__INITIAL_LOSS = eINSTANCE.getRoof_InitialLoss();

		/**
		 * The meta object literal for the '<em><b>Collection Efficiency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__COLLECTION_EFFICIENCY = eINSTANCE.getRoof_CollectionEfficiency();

		/**
		 * The meta object literal for the '<em><b>Peak Runoff</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__PEAK_RUNOFF = eINSTANCE.getRoof_PeakRunoff();

		/**
		 * The meta object literal for the '<em><b>Hazards</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__HAZARDS = eINSTANCE.getRoof_Hazards();

		/**
		 * The meta object literal for the '<em><b>Age</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF__AGE = eINSTANCE.getRoof_Age();

		/**
		 * The meta object literal for the '<em><b>Drains</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOF__DRAINS = eINSTANCE.getRoof_Drains();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RoofDrainImpl <em>Roof Drain</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RoofDrainImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRoofDrain()
		 * @generated
		 */
		EClass ROOF_DRAIN = eINSTANCE.getRoofDrain();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROOF_DRAIN__TO = eINSTANCE.getRoofDrain_To();

		/**
		 * The meta object literal for the '<em><b>Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROOF_DRAIN__SHARE = eINSTANCE.getRoofDrain_Share();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.GutterImpl <em>Gutter</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.GutterImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGutter()
		 * @generated
		 */
		EClass GUTTER = eINSTANCE.getGutter();

		/**
		 * The meta object literal for the '<em><b>Profile</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__PROFILE = eINSTANCE.getGutter_Profile();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__WIDTH = eINSTANCE.getGutter_Width();

		/**
		 * The meta object literal for the '<em><b>Sole Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__SOLE_WIDTH = eINSTANCE.getGutter_SoleWidth();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__DEPTH = eINSTANCE.getGutter_Depth();

		/**
		 * The meta object literal for the '<em><b>Freeboard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__FREEBOARD = eINSTANCE.getGutter_Freeboard();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__LENGTH = eINSTANCE.getGutter_Length();

		/**
		 * The meta object literal for the '<em><b>Slope</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__SLOPE = eINSTANCE.getGutter_Slope();

		/**
		 * The meta object literal for the '<em><b>Roughness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__ROUGHNESS = eINSTANCE.getGutter_Roughness();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__LEVEL = eINSTANCE.getGutter_Level();

		/**
		 * The meta object literal for the '<em><b>Bends</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__BENDS = eINSTANCE.getGutter_Bends();

		/**
		 * The meta object literal for the '<em><b>Leaf Guard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__LEAF_GUARD = eINSTANCE.getGutter_LeafGuard();

		/**
		 * The meta object literal for the '<em><b>Last Cleaned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER__LAST_CLEANED = eINSTANCE.getGutter_LastCleaned();

		/**
		 * The meta object literal for the '<em><b>Outlets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GUTTER__OUTLETS = eINSTANCE.getGutter_Outlets();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.GutterOutletImpl <em>Gutter Outlet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.GutterOutletImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGutterOutlet()
		 * @generated
		 */
		EClass GUTTER_OUTLET = eINSTANCE.getGutterOutlet();

		/**
		 * The meta object literal for the '<em><b>Position</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER_OUTLET__POSITION = eINSTANCE.getGutterOutlet_Position();

		/**
		 * The meta object literal for the '<em><b>Shape</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER_OUTLET__SHAPE = eINSTANCE.getGutterOutlet_Shape();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER_OUTLET__DIAMETER = eINSTANCE.getGutterOutlet_Diameter();

		/**
		 * The meta object literal for the '<em><b>Strainer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute GUTTER_OUTLET__STRAINER = eINSTANCE.getGutterOutlet_Strainer();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference GUTTER_OUTLET__TO = eINSTANCE.getGutterOutlet_To();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.DownpipeImpl <em>Downpipe</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.DownpipeImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDownpipe()
		 * @generated
		 */
		EClass DOWNPIPE = eINSTANCE.getDownpipe();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOWNPIPE__BORE = eINSTANCE.getDownpipe_Bore();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOWNPIPE__LENGTH = eINSTANCE.getDownpipe_Length();

		/**
		 * The meta object literal for the '<em><b>Fill Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOWNPIPE__FILL_SHARE = eINSTANCE.getDownpipe_FillShare();

		/**
		 * The meta object literal for the '<em><b>Wet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOWNPIPE__WET = eINSTANCE.getDownpipe_Wet();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ScreenImpl <em>Screen</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ScreenImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getScreen()
		 * @generated
		 */
		EClass SCREEN = eINSTANCE.getScreen();

		/**
		 * The meta object literal for the '<em><b>Mesh</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN__MESH = eINSTANCE.getScreen_Mesh();

		/**
		 * The meta object literal for the '<em><b>Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN__AREA = eINSTANCE.getScreen_Area();

		/**
		 * The meta object literal for the '<em><b>Open Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN__OPEN_SHARE = eINSTANCE.getScreen_OpenShare();

		/**
		 * The meta object literal for the '<em><b>Blocked Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN__BLOCKED_SHARE = eINSTANCE.getScreen_BlockedShare();

		/**
		 * The meta object literal for the '<em><b>Lost Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN__LOST_SHARE = eINSTANCE.getScreen_LostShare();

		/**
		 * The meta object literal for the '<em><b>Rim Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SCREEN__RIM_HEIGHT = eINSTANCE.getScreen_RimHeight();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl <em>First Flush Diverter</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.FirstFlushDiverterImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFirstFlushDiverter()
		 * @generated
		 */
		EClass FIRST_FLUSH_DIVERTER = eINSTANCE.getFirstFlushDiverter();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRST_FLUSH_DIVERTER__DEPTH = eINSTANCE.getFirstFlushDiverter_Depth();

		/**
		 * The meta object literal for the '<em><b>Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRST_FLUSH_DIVERTER__VOLUME = eINSTANCE.getFirstFlushDiverter_Volume();

		/**
		 * The meta object literal for the '<em><b>Reset Dry Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS = eINSTANCE.getFirstFlushDiverter_ResetDryDays();

		/**
		 * The meta object literal for the '<em><b>Drain Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRST_FLUSH_DIVERTER__DRAIN_TIME = eINSTANCE.getFirstFlushDiverter_DrainTime();

		/**
		 * The meta object literal for the '<em><b>Drain Orifice</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRST_FLUSH_DIVERTER__DRAIN_ORIFICE = eINSTANCE.getFirstFlushDiverter_DrainOrifice();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIRST_FLUSH_DIVERTER__HEIGHT = eINSTANCE.getFirstFlushDiverter_Height();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TankImpl <em>Tank</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TankImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTank()
		 * @generated
		 */
		EClass TANK = eINSTANCE.getTank();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__KIND = eINSTANCE.getTank_Kind();

		/**
		 * The meta object literal for the '<em><b>Capacity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__CAPACITY = eINSTANCE.getTank_Capacity();

		/**
		 * The meta object literal for the '<em><b>Dead Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__DEAD_VOLUME = eINSTANCE.getTank_DeadVolume();

		/**
		 * The meta object literal for the '<em><b>Reserve Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__RESERVE_VOLUME = eINSTANCE.getTank_ReserveVolume();

		/**
		 * The meta object literal for the '<em><b>Base Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__BASE_LEVEL = eINSTANCE.getTank_BaseLevel();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__HEIGHT = eINSTANCE.getTank_Height();

		/**
		 * The meta object literal for the '<em><b>Outlet Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__OUTLET_HEIGHT = eINSTANCE.getTank_OutletHeight();

		/**
		 * The meta object literal for the '<em><b>Reserve Outlet Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__RESERVE_OUTLET_HEIGHT = eINSTANCE.getTank_ReserveOutletHeight();

		/**
		 * The meta object literal for the '<em><b>Overflow Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__OVERFLOW_HEIGHT = eINSTANCE.getTank_OverflowHeight();

		/**
		 * The meta object literal for the '<em><b>Inlet Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__INLET_HEIGHT = eINSTANCE.getTank_InletHeight();

		/**
		 * The meta object literal for the '<em><b>Level Volume</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TANK__LEVEL_VOLUME = eINSTANCE.getTank_LevelVolume();

		/**
		 * The meta object literal for the '<em><b>Start Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__START_HEIGHT = eINSTANCE.getTank_StartHeight();

		/**
		 * The meta object literal for the '<em><b>Stop Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__STOP_HEIGHT = eINSTANCE.getTank_StopHeight();

		/**
		 * The meta object literal for the '<em><b>Current Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__CURRENT_HEIGHT = eINSTANCE.getTank_CurrentHeight();

		/**
		 * The meta object literal for the '<em><b>Current Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__CURRENT_DATE = eINSTANCE.getTank_CurrentDate();

		/**
		 * The meta object literal for the '<em><b>Place In Ground</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__PLACE_IN_GROUND = eINSTANCE.getTank_PlaceInGround();

		/**
		 * The meta object literal for the '<em><b>Cover</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__COVER = eINSTANCE.getTank_Cover();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__MATERIAL = eINSTANCE.getTank_Material();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__DIAMETER = eINSTANCE.getTank_Diameter();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__LENGTH = eINSTANCE.getTank_Length();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__WIDTH = eINSTANCE.getTank_Width();

		/**
		 * The meta object literal for the '<em><b>Open Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__OPEN_AREA = eINSTANCE.getTank_OpenArea();

		/**
		 * The meta object literal for the '<em><b>Evaporation Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__EVAPORATION_FACTOR = eINSTANCE.getTank_EvaporationFactor();

		/**
		 * The meta object literal for the '<em><b>Leakage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__LEAKAGE = eINSTANCE.getTank_Leakage();

		/**
		 * The meta object literal for the '<em><b>Overflow Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__OVERFLOW_DIAMETER = eINSTANCE.getTank_OverflowDiameter();

		/**
		 * The meta object literal for the '<em><b>Overflows To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TANK__OVERFLOWS_TO = eINSTANCE.getTank_OverflowsTo();

		/**
		 * The meta object literal for the '<em><b>Vent Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__VENT_AREA = eINSTANCE.getTank_VentArea();

		/**
		 * The meta object literal for the '<em><b>Screen Mesh</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__SCREEN_MESH = eINSTANCE.getTank_ScreenMesh();

		/**
		 * The meta object literal for the '<em><b>Floating Intake</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__FLOATING_INTAKE = eINSTANCE.getTank_FloatingIntake();

		/**
		 * The meta object literal for the '<em><b>Calmed Inlet</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__CALMED_INLET = eINSTANCE.getTank_CalmedInlet();

		/**
		 * The meta object literal for the '<em><b>Locked Hatch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__LOCKED_HATCH = eINSTANCE.getTank_LockedHatch();

		/**
		 * The meta object literal for the '<em><b>Last Cleaned</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK__LAST_CLEANED = eINSTANCE.getTank_LastCleaned();

		/**
		 * The meta object literal for the '<em><b>Siting</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TANK__SITING = eINSTANCE.getTank_Siting();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.LevelVolumePointImpl <em>Level Volume Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.LevelVolumePointImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLevelVolumePoint()
		 * @generated
		 */
		EClass LEVEL_VOLUME_POINT = eINSTANCE.getLevelVolumePoint();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LEVEL_VOLUME_POINT__HEIGHT = eINSTANCE.getLevelVolumePoint_Height();

		/**
		 * The meta object literal for the '<em><b>Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LEVEL_VOLUME_POINT__VOLUME = eINSTANCE.getLevelVolumePoint_Volume();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.SitingImpl <em>Siting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.SitingImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSiting()
		 * @generated
		 */
		EClass SITING = eINSTANCE.getSiting();

		/**
		 * The meta object literal for the '<em><b>Latrine Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__LATRINE_DISTANCE = eINSTANCE.getSiting_LatrineDistance();

		/**
		 * The meta object literal for the '<em><b>Latrine Uphill</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__LATRINE_UPHILL = eINSTANCE.getSiting_LatrineUphill();

		/**
		 * The meta object literal for the '<em><b>Refuse Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__REFUSE_DISTANCE = eINSTANCE.getSiting_RefuseDistance();

		/**
		 * The meta object literal for the '<em><b>Groundwater Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__GROUNDWATER_DEPTH = eINSTANCE.getSiting_GroundwaterDepth();

		/**
		 * The meta object literal for the '<em><b>Burial Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__BURIAL_DEPTH = eINSTANCE.getSiting_BurialDepth();

		/**
		 * The meta object literal for the '<em><b>Base Area</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__BASE_AREA = eINSTANCE.getSiting_BaseArea();

		/**
		 * The meta object literal for the '<em><b>Empty Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__EMPTY_MASS = eINSTANCE.getSiting_EmptyMass();

		/**
		 * The meta object literal for the '<em><b>Soil Cover</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__SOIL_COVER = eINSTANCE.getSiting_SoilCover();

		/**
		 * The meta object literal for the '<em><b>Allowed Bearing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__ALLOWED_BEARING = eINSTANCE.getSiting_AllowedBearing();

		/**
		 * The meta object literal for the '<em><b>Stand Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__STAND_HEIGHT = eINSTANCE.getSiting_StandHeight();

		/**
		 * The meta object literal for the '<em><b>Foundation Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__FOUNDATION_DISTANCE = eINSTANCE.getSiting_FoundationDistance();

		/**
		 * The meta object literal for the '<em><b>Soakaway</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__SOAKAWAY = eINSTANCE.getSiting_Soakaway();

		/**
		 * The meta object literal for the '<em><b>Soakaway Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__SOAKAWAY_LENGTH = eINSTANCE.getSiting_SoakawayLength();

		/**
		 * The meta object literal for the '<em><b>Soakaway Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__SOAKAWAY_WIDTH = eINSTANCE.getSiting_SoakawayWidth();

		/**
		 * The meta object literal for the '<em><b>Soakaway Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__SOAKAWAY_DEPTH = eINSTANCE.getSiting_SoakawayDepth();

		/**
		 * The meta object literal for the '<em><b>Soakaway Voids</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__SOAKAWAY_VOIDS = eINSTANCE.getSiting_SoakawayVoids();

		/**
		 * The meta object literal for the '<em><b>Infiltration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__INFILTRATION = eINSTANCE.getSiting_Infiltration();

		/**
		 * The meta object literal for the '<em><b>Tap Drain</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITING__TAP_DRAIN = eINSTANCE.getSiting_TapDrain();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TankLinkImpl <em>Tank Link</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TankLinkImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankLink()
		 * @generated
		 */
		EClass TANK_LINK = eINSTANCE.getTankLink();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK_LINK__KIND = eINSTANCE.getTankLink_Kind();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TANK_LINK__FROM = eINSTANCE.getTankLink_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TANK_LINK__TO = eINSTANCE.getTankLink_To();

		/**
		 * The meta object literal for the '<em><b>Sill Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK_LINK__SILL_HEIGHT = eINSTANCE.getTankLink_SillHeight();

		/**
		 * The meta object literal for the '<em><b>Max Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK_LINK__MAX_FLOW = eINSTANCE.getTankLink_MaxFlow();

		/**
		 * The meta object literal for the '<em><b>Daily Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TANK_LINK__DAILY_VOLUME = eINSTANCE.getTankLink_DailyVolume();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.JunctionImpl <em>Junction</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.JunctionImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getJunction()
		 * @generated
		 */
		EClass JUNCTION = eINSTANCE.getJunction();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JUNCTION__LEVEL = eINSTANCE.getJunction_Level();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PipeRunImpl <em>Pipe Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PipeRunImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPipeRun()
		 * @generated
		 */
		EClass PIPE_RUN = eINSTANCE.getPipeRun();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__USE = eINSTANCE.getPipeRun_Use();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIPE_RUN__FROM = eINSTANCE.getPipeRun_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIPE_RUN__TO = eINSTANCE.getPipeRun_To();

		/**
		 * The meta object literal for the '<em><b>Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__BORE = eINSTANCE.getPipeRun_Bore();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__LENGTH = eINSTANCE.getPipeRun_Length();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__MATERIAL = eINSTANCE.getPipeRun_Material();

		/**
		 * The meta object literal for the '<em><b>Wall Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__WALL_THICKNESS = eINSTANCE.getPipeRun_WallThickness();

		/**
		 * The meta object literal for the '<em><b>Closure Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__CLOSURE_TIME = eINSTANCE.getPipeRun_ClosureTime();

		/**
		 * The meta object literal for the '<em><b>Pressure Class</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__PRESSURE_CLASS = eINSTANCE.getPipeRun_PressureClass();

		/**
		 * The meta object literal for the '<em><b>Roughness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__ROUGHNESS = eINSTANCE.getPipeRun_Roughness();

		/**
		 * The meta object literal for the '<em><b>Aged Roughness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIPE_RUN__AGED_ROUGHNESS = eINSTANCE.getPipeRun_AgedRoughness();

		/**
		 * The meta object literal for the '<em><b>Fittings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIPE_RUN__FITTINGS = eINSTANCE.getPipeRun_Fittings();

		/**
		 * The meta object literal for the '<em><b>Profile</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIPE_RUN__PROFILE = eINSTANCE.getPipeRun_Profile();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.FittingImpl <em>Fitting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.FittingImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFitting()
		 * @generated
		 */
		EClass FITTING = eINSTANCE.getFitting();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FITTING__KIND = eINSTANCE.getFitting_Kind();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FITTING__COUNT = eINSTANCE.getFitting_Count();

		/**
		 * The meta object literal for the '<em><b>Loss Coefficient</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FITTING__LOSS_COEFFICIENT = eINSTANCE.getFitting_LossCoefficient();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ProfilePointImpl <em>Profile Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ProfilePointImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getProfilePoint()
		 * @generated
		 */
		EClass PROFILE_POINT = eINSTANCE.getProfilePoint();

		/**
		 * The meta object literal for the '<em><b>Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROFILE_POINT__DISTANCE = eINSTANCE.getProfilePoint_Distance();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROFILE_POINT__LEVEL = eINSTANCE.getProfilePoint_Level();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PumpDataImpl <em>Pump Data</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PumpDataImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpData()
		 * @generated
		 */
		EClass PUMP_DATA = eINSTANCE.getPumpData();

		/**
		 * The meta object literal for the '<em><b>Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PUMP_DATA__POINTS = eINSTANCE.getPumpData_Points();

		/**
		 * The meta object literal for the '<em><b>Motor Efficiency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__MOTOR_EFFICIENCY = eINSTANCE.getPumpData_MotorEfficiency();

		/**
		 * The meta object literal for the '<em><b>Rated Speed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__RATED_SPEED = eINSTANCE.getPumpData_RatedSpeed();

		/**
		 * The meta object literal for the '<em><b>Rated Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__RATED_POWER = eINSTANCE.getPumpData_RatedPower();

		/**
		 * The meta object literal for the '<em><b>Discharge Bore</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__DISCHARGE_BORE = eINSTANCE.getPumpData_DischargeBore();

		/**
		 * The meta object literal for the '<em><b>Min Submergence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__MIN_SUBMERGENCE = eINSTANCE.getPumpData_MinSubmergence();

		/**
		 * The meta object literal for the '<em><b>Max Starts</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__MAX_STARTS = eINSTANCE.getPumpData_MaxStarts();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__PRICE = eINSTANCE.getPumpData_Price();

		/**
		 * The meta object literal for the '<em><b>Data Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_DATA__DATA_SOURCE = eINSTANCE.getPumpData_DataSource();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PumpPointImpl <em>Pump Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PumpPointImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpPoint()
		 * @generated
		 */
		EClass PUMP_POINT = eINSTANCE.getPumpPoint();

		/**
		 * The meta object literal for the '<em><b>Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_POINT__FLOW = eINSTANCE.getPumpPoint_Flow();

		/**
		 * The meta object literal for the '<em><b>Head</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_POINT__HEAD = eINSTANCE.getPumpPoint_Head();

		/**
		 * The meta object literal for the '<em><b>Efficiency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_POINT__EFFICIENCY = eINSTANCE.getPumpPoint_Efficiency();

		/**
		 * The meta object literal for the '<em><b>Npsh Required</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_POINT__NPSH_REQUIRED = eINSTANCE.getPumpPoint_NpshRequired();

		/**
		 * The meta object literal for the '<em><b>Input Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_POINT__INPUT_POWER = eINSTANCE.getPumpPoint_InputPower();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PumpImpl <em>Pump</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PumpImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPump()
		 * @generated
		 */
		EClass PUMP = eINSTANCE.getPump();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__KIND = eINSTANCE.getPump_Kind();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__COUNT = eINSTANCE.getPump_Count();

		/**
		 * The meta object literal for the '<em><b>Arrangement</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__ARRANGEMENT = eINSTANCE.getPump_Arrangement();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__LEVEL = eINSTANCE.getPump_Level();

		/**
		 * The meta object literal for the '<em><b>Speed Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__SPEED_RATIO = eINSTANCE.getPump_SpeedRatio();

		/**
		 * The meta object literal for the '<em><b>Cut Out Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__CUT_OUT_HEIGHT = eINSTANCE.getPump_CutOutHeight();

		/**
		 * The meta object literal for the '<em><b>Foot Valve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__FOOT_VALVE = eINSTANCE.getPump_FootValve();

		/**
		 * The meta object literal for the '<em><b>Energy Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__ENERGY_SOURCE = eINSTANCE.getPump_EnergySource();

		/**
		 * The meta object literal for the '<em><b>Supply Times</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PUMP__SUPPLY_TIMES = eINSTANCE.getPump_SupplyTimes();

		/**
		 * The meta object literal for the '<em><b>Outage Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__OUTAGE_SHARE = eINSTANCE.getPump_OutageShare();

		/**
		 * The meta object literal for the '<em><b>Stroke Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__STROKE_VOLUME = eINSTANCE.getPump_StrokeVolume();

		/**
		 * The meta object literal for the '<em><b>Strokes Per Minute</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP__STROKES_PER_MINUTE = eINSTANCE.getPump_StrokesPerMinute();

		/**
		 * The meta object literal for the '<em><b>Candidates</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PUMP__CANDIDATES = eINSTANCE.getPump_Candidates();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PumpCandidateImpl <em>Pump Candidate</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PumpCandidateImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpCandidate()
		 * @generated
		 */
		EClass PUMP_CANDIDATE = eINSTANCE.getPumpCandidate();

		/**
		 * The meta object literal for the '<em><b>Model</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_CANDIDATE__MODEL = eINSTANCE.getPumpCandidate_Model();

		/**
		 * The meta object literal for the '<em><b>Chosen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUMP_CANDIDATE__CHOSEN = eINSTANCE.getPumpCandidate_Chosen();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.SupplyTimeImpl <em>Supply Time</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.SupplyTimeImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSupplyTime()
		 * @generated
		 */
		EClass SUPPLY_TIME = eINSTANCE.getSupplyTime();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SUPPLY_TIME__FROM = eINSTANCE.getSupplyTime_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SUPPLY_TIME__TO = eINSTANCE.getSupplyTime_To();

		/**
		 * The meta object literal for the '<em><b>Weekdays</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SUPPLY_TIME__WEEKDAYS = eINSTANCE.getSupplyTime_Weekdays();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PressureVesselImpl <em>Pressure Vessel</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PressureVesselImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPressureVessel()
		 * @generated
		 */
		EClass PRESSURE_VESSEL = eINSTANCE.getPressureVessel();

		/**
		 * The meta object literal for the '<em><b>Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESSURE_VESSEL__VOLUME = eINSTANCE.getPressureVessel_Volume();

		/**
		 * The meta object literal for the '<em><b>Precharge</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESSURE_VESSEL__PRECHARGE = eINSTANCE.getPressureVessel_Precharge();

		/**
		 * The meta object literal for the '<em><b>Cut In</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESSURE_VESSEL__CUT_IN = eINSTANCE.getPressureVessel_CutIn();

		/**
		 * The meta object literal for the '<em><b>Cut Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESSURE_VESSEL__CUT_OUT = eINSTANCE.getPressureVessel_CutOut();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRESSURE_VESSEL__LEVEL = eINSTANCE.getPressureVessel_Level();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TapImpl <em>Tap</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TapImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTap()
		 * @generated
		 */
		EClass TAP = eINSTANCE.getTap();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__KIND = eINSTANCE.getTap_Kind();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__LEVEL = eINSTANCE.getTap_Level();

		/**
		 * The meta object literal for the '<em><b>Minimum Head</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__MINIMUM_HEAD = eINSTANCE.getTap_MinimumHead();

		/**
		 * The meta object literal for the '<em><b>Design Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__DESIGN_FLOW = eINSTANCE.getTap_DesignFlow();

		/**
		 * The meta object literal for the '<em><b>Orifice</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__ORIFICE = eINSTANCE.getTap_Orifice();

		/**
		 * The meta object literal for the '<em><b>Loss Coefficient</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__LOSS_COEFFICIENT = eINSTANCE.getTap_LossCoefficient();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__COUNT = eINSTANCE.getTap_Count();

		/**
		 * The meta object literal for the '<em><b>Open Together</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__OPEN_TOGETHER = eINSTANCE.getTap_OpenTogether();

		/**
		 * The meta object literal for the '<em><b>Walking Distance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TAP__WALKING_DISTANCE = eINSTANCE.getTap_WalkingDistance();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.UseCalendarImpl <em>Use Calendar</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.UseCalendarImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUseCalendar()
		 * @generated
		 */
		EClass USE_CALENDAR = eINSTANCE.getUseCalendar();

		/**
		 * The meta object literal for the '<em><b>Periods</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE_CALENDAR__PERIODS = eINSTANCE.getUseCalendar_Periods();

		/**
		 * The meta object literal for the '<em><b>Weekdays</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_CALENDAR__WEEKDAYS = eINSTANCE.getUseCalendar_Weekdays();

		/**
		 * The meta object literal for the '<em><b>Holidays</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE_CALENDAR__HOLIDAYS = eINSTANCE.getUseCalendar_Holidays();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.UsePeriodImpl <em>Use Period</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.UsePeriodImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUsePeriod()
		 * @generated
		 */
		EClass USE_PERIOD = eINSTANCE.getUsePeriod();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PERIOD__NAME = eINSTANCE.getUsePeriod_Name();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PERIOD__FROM = eINSTANCE.getUsePeriod_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PERIOD__TO = eINSTANCE.getUsePeriod_To();

		/**
		 * The meta object literal for the '<em><b>Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PERIOD__FACTOR = eINSTANCE.getUsePeriod_Factor();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.HolidayImpl <em>Holiday</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.HolidayImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHoliday()
		 * @generated
		 */
		EClass HOLIDAY = eINSTANCE.getHoliday();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLIDAY__NAME = eINSTANCE.getHoliday_Name();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLIDAY__FROM = eINSTANCE.getHoliday_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLIDAY__TO = eINSTANCE.getHoliday_To();

		/**
		 * The meta object literal for the '<em><b>Factor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLIDAY__FACTOR = eINSTANCE.getHoliday_Factor();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.UseImpl <em>Use</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.UseImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUse()
		 * @generated
		 */
		EClass USE = eINSTANCE.getUse();

		/**
		 * The meta object literal for the '<em><b>Purpose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__PURPOSE = eINSTANCE.getUse_Purpose();

		/**
		 * The meta object literal for the '<em><b>Consumers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__CONSUMERS = eINSTANCE.getUse_Consumers();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__COUNT = eINSTANCE.getUse_Count();

		/**
		 * The meta object literal for the '<em><b>Amount Each</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__AMOUNT_EACH = eINSTANCE.getUse_AmountEach();

		/**
		 * The meta object literal for the '<em><b>Priority</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__PRIORITY = eINSTANCE.getUse_Priority();

		/**
		 * The meta object literal for the '<em><b>Vulnerable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__VULNERABLE = eINSTANCE.getUse_Vulnerable();

		/**
		 * The meta object literal for the '<em><b>Calendar</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE__CALENDAR = eINSTANCE.getUse_Calendar();

		/**
		 * The meta object literal for the '<em><b>Taps</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE__TAPS = eINSTANCE.getUse_Taps();

		/**
		 * The meta object literal for the '<em><b>Tank</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE__TANK = eINSTANCE.getUse_Tank();

		/**
		 * The meta object literal for the '<em><b>Train</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE__TRAIN = eINSTANCE.getUse_Train();

		/**
		 * The meta object literal for the '<em><b>Peaks</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference USE__PEAKS = eINSTANCE.getUse_Peaks();

		/**
		 * The meta object literal for the '<em><b>Containers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE__CONTAINERS = eINSTANCE.getUse_Containers();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.UsePeakImpl <em>Use Peak</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.UsePeakImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUsePeak()
		 * @generated
		 */
		EClass USE_PEAK = eINSTANCE.getUsePeak();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PEAK__FROM = eINSTANCE.getUsePeak_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PEAK__TO = eINSTANCE.getUsePeak_To();

		/**
		 * The meta object literal for the '<em><b>Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USE_PEAK__SHARE = eINSTANCE.getUsePeak_Share();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RationingRuleImpl <em>Rationing Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RationingRuleImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRationingRule()
		 * @generated
		 */
		EClass RATIONING_RULE = eINSTANCE.getRationingRule();

		/**
		 * The meta object literal for the '<em><b>Tank</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RATIONING_RULE__TANK = eINSTANCE.getRationingRule_Tank();

		/**
		 * The meta object literal for the '<em><b>Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIONING_RULE__BELOW = eINSTANCE.getRationingRule_Below();

		/**
		 * The meta object literal for the '<em><b>Uses</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RATIONING_RULE__USES = eINSTANCE.getRationingRule_Uses();

		/**
		 * The meta object literal for the '<em><b>Allowed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIONING_RULE__ALLOWED = eINSTANCE.getRationingRule_Allowed();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIONING_RULE__FROM = eINSTANCE.getRationingRule_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIONING_RULE__TO = eINSTANCE.getRationingRule_To();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TopUpImpl <em>Top Up</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TopUpImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTopUp()
		 * @generated
		 */
		EClass TOP_UP = eINSTANCE.getTopUp();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_UP__SOURCE = eINSTANCE.getTopUp_Source();

		/**
		 * The meta object literal for the '<em><b>Tank</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TOP_UP__TANK = eINSTANCE.getTopUp_Tank();

		/**
		 * The meta object literal for the '<em><b>Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_UP__LOAD = eINSTANCE.getTopUp_Load();

		/**
		 * The meta object literal for the '<em><b>Order Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_UP__ORDER_BELOW = eINSTANCE.getTopUp_OrderBelow();

		/**
		 * The meta object literal for the '<em><b>Delay</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_UP__DELAY = eINSTANCE.getTopUp_Delay();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_UP__PRICE = eINSTANCE.getTopUp_Price();

		/**
		 * The meta object literal for the '<em><b>Most Per Year</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TOP_UP__MOST_PER_YEAR = eINSTANCE.getTopUp_MostPerYear();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RawWaterImpl <em>Raw Water</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RawWaterImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRawWater()
		 * @generated
		 */
		EClass RAW_WATER = eINSTANCE.getRawWater();

		/**
		 * The meta object literal for the '<em><b>Tested</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER__TESTED = eINSTANCE.getRawWater_Tested();

		/**
		 * The meta object literal for the '<em><b>Turbidity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER__TURBIDITY = eINSTANCE.getRawWater_Turbidity();

		/**
		 * The meta object literal for the '<em><b>Ph</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER__PH = eINSTANCE.getRawWater_Ph();

		/**
		 * The meta object literal for the '<em><b>Alkalinity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER__ALKALINITY = eINSTANCE.getRawWater_Alkalinity();

		/**
		 * The meta object literal for the '<em><b>Chlorine Demand</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER__CHLORINE_DEMAND = eINSTANCE.getRawWater_ChlorineDemand();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RAW_WATER__SOURCE = eINSTANCE.getRawWater_Source();

		/**
		 * The meta object literal for the '<em><b>Pathogens</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RAW_WATER__PATHOGENS = eINSTANCE.getRawWater_Pathogens();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.PathogenLevelImpl <em>Pathogen Level</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.PathogenLevelImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPathogenLevel()
		 * @generated
		 */
		EClass PATHOGEN_LEVEL = eINSTANCE.getPathogenLevel();

		/**
		 * The meta object literal for the '<em><b>Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATHOGEN_LEVEL__GROUP = eINSTANCE.getPathogenLevel_Group();

		/**
		 * The meta object literal for the '<em><b>Pathogen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATHOGEN_LEVEL__PATHOGEN = eINSTANCE.getPathogenLevel_Pathogen();

		/**
		 * The meta object literal for the '<em><b>Per Litre</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATHOGEN_LEVEL__PER_LITRE = eINSTANCE.getPathogenLevel_PerLitre();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATHOGEN_LEVEL__LOW = eINSTANCE.getPathogenLevel_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATHOGEN_LEVEL__HIGH = eINSTANCE.getPathogenLevel_High();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATHOGEN_LEVEL__SOURCE = eINSTANCE.getPathogenLevel_Source();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TreatmentTrainImpl <em>Treatment Train</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TreatmentTrainImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTreatmentTrain()
		 * @generated
		 */
		EClass TREATMENT_TRAIN = eINSTANCE.getTreatmentTrain();

		/**
		 * The meta object literal for the '<em><b>Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_TRAIN__LEVEL = eINSTANCE.getTreatmentTrain_Level();

		/**
		 * The meta object literal for the '<em><b>Design Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_TRAIN__DESIGN_FLOW = eINSTANCE.getTreatmentTrain_DesignFlow();

		/**
		 * The meta object literal for the '<em><b>Batch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_TRAIN__BATCH = eINSTANCE.getTreatmentTrain_Batch();

		/**
		 * The meta object literal for the '<em><b>Steps</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TREATMENT_TRAIN__STEPS = eINSTANCE.getTreatmentTrain_Steps();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.TreatmentStepImpl <em>Treatment Step</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.TreatmentStepImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTreatmentStep()
		 * @generated
		 */
		EClass TREATMENT_STEP = eINSTANCE.getTreatmentStep();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__KIND = eINSTANCE.getTreatmentStep_Kind();

		/**
		 * The meta object literal for the '<em><b>Active</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__ACTIVE = eINSTANCE.getTreatmentStep_Active();

		/**
		 * The meta object literal for the '<em><b>Rating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__RATING = eINSTANCE.getTreatmentStep_Rating();

		/**
		 * The meta object literal for the '<em><b>Rating Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__RATING_BASIS = eINSTANCE.getTreatmentStep_RatingBasis();

		/**
		 * The meta object literal for the '<em><b>Reductions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TREATMENT_STEP__REDUCTIONS = eINSTANCE.getTreatmentStep_Reductions();

		/**
		 * The meta object literal for the '<em><b>Availability</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__AVAILABILITY = eINSTANCE.getTreatmentStep_Availability();

		/**
		 * The meta object literal for the '<em><b>Max Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__MAX_FLOW = eINSTANCE.getTreatmentStep_MaxFlow();

		/**
		 * The meta object literal for the '<em><b>Head Loss Clean</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__HEAD_LOSS_CLEAN = eINSTANCE.getTreatmentStep_HeadLossClean();

		/**
		 * The meta object literal for the '<em><b>Head Loss Fouled</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__HEAD_LOSS_FOULED = eINSTANCE.getTreatmentStep_HeadLossFouled();

		/**
		 * The meta object literal for the '<em><b>Reference Flow</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__REFERENCE_FLOW = eINSTANCE.getTreatmentStep_ReferenceFlow();

		/**
		 * The meta object literal for the '<em><b>Change Interval</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__CHANGE_INTERVAL = eINSTANCE.getTreatmentStep_ChangeInterval();

		/**
		 * The meta object literal for the '<em><b>Change Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__CHANGE_VOLUME = eINSTANCE.getTreatmentStep_ChangeVolume();

		/**
		 * The meta object literal for the '<em><b>Change Cost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__CHANGE_COST = eINSTANCE.getTreatmentStep_ChangeCost();

		/**
		 * The meta object literal for the '<em><b>Last Changed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__LAST_CHANGED = eINSTANCE.getTreatmentStep_LastChanged();

		/**
		 * The meta object literal for the '<em><b>Max Turbidity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__MAX_TURBIDITY = eINSTANCE.getTreatmentStep_MaxTurbidity();

		/**
		 * The meta object literal for the '<em><b>Energy Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__ENERGY_SOURCE = eINSTANCE.getTreatmentStep_EnergySource();

		/**
		 * The meta object literal for the '<em><b>Power</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__POWER = eINSTANCE.getTreatmentStep_Power();

		/**
		 * The meta object literal for the '<em><b>Uv Dose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__UV_DOSE = eINSTANCE.getTreatmentStep_UvDose();

		/**
		 * The meta object literal for the '<em><b>Validated</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__VALIDATED = eINSTANCE.getTreatmentStep_Validated();

		/**
		 * The meta object literal for the '<em><b>Product</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__PRODUCT = eINSTANCE.getTreatmentStep_Product();

		/**
		 * The meta object literal for the '<em><b>Strength</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__STRENGTH = eINSTANCE.getTreatmentStep_Strength();

		/**
		 * The meta object literal for the '<em><b>Strength Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__STRENGTH_BASIS = eINSTANCE.getTreatmentStep_StrengthBasis();

		/**
		 * The meta object literal for the '<em><b>Product Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__PRODUCT_DENSITY = eINSTANCE.getTreatmentStep_ProductDensity();

		/**
		 * The meta object literal for the '<em><b>Product Age</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__PRODUCT_AGE = eINSTANCE.getTreatmentStep_ProductAge();

		/**
		 * The meta object literal for the '<em><b>Dose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__DOSE = eINSTANCE.getTreatmentStep_Dose();

		/**
		 * The meta object literal for the '<em><b>Residual</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__RESIDUAL = eINSTANCE.getTreatmentStep_Residual();

		/**
		 * The meta object literal for the '<em><b>Residual Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__RESIDUAL_DATE = eINSTANCE.getTreatmentStep_ResidualDate();

		/**
		 * The meta object literal for the '<em><b>Contact Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__CONTACT_VOLUME = eINSTANCE.getTreatmentStep_ContactVolume();

		/**
		 * The meta object literal for the '<em><b>Contact Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__CONTACT_TIME = eINSTANCE.getTreatmentStep_ContactTime();

		/**
		 * The meta object literal for the '<em><b>Baffling</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__BAFFLING = eINSTANCE.getTreatmentStep_Baffling();

		/**
		 * The meta object literal for the '<em><b>Batch Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT_STEP__BATCH_VOLUME = eINSTANCE.getTreatmentStep_BatchVolume();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.LogReductionImpl <em>Log Reduction</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.LogReductionImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLogReduction()
		 * @generated
		 */
		EClass LOG_REDUCTION = eINSTANCE.getLogReduction();

		/**
		 * The meta object literal for the '<em><b>Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_REDUCTION__GROUP = eINSTANCE.getLogReduction_Group();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_REDUCTION__LOW = eINSTANCE.getLogReduction_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_REDUCTION__HIGH = eINSTANCE.getLogReduction_High();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_REDUCTION__SOURCE = eINSTANCE.getLogReduction_Source();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.CostItemImpl <em>Cost Item</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.CostItemImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCostItem()
		 * @generated
		 */
		EClass COST_ITEM = eINSTANCE.getCostItem();

		/**
		 * The meta object literal for the '<em><b>Category</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__CATEGORY = eINSTANCE.getCostItem_Category();

		/**
		 * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__AMOUNT = eINSTANCE.getCostItem_Amount();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__QUANTITY = eINSTANCE.getCostItem_Quantity();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__UNIT = eINSTANCE.getCostItem_Unit();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference COST_ITEM__ELEMENT = eINSTANCE.getCostItem_Element();

		/**
		 * The meta object literal for the '<em><b>First Year</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__FIRST_YEAR = eINSTANCE.getCostItem_FirstYear();

		/**
		 * The meta object literal for the '<em><b>Interval</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__INTERVAL = eINSTANCE.getCostItem_Interval();

		/**
		 * The meta object literal for the '<em><b>Life</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__LIFE = eINSTANCE.getCostItem_Life();

		/**
		 * The meta object literal for the '<em><b>Yearly Change</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__YEARLY_CHANGE = eINSTANCE.getCostItem_YearlyChange();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COST_ITEM__PERSON = eINSTANCE.getCostItem_Person();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl <em>Alternative Supply</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.AlternativeSupplyImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getAlternativeSupply()
		 * @generated
		 */
		EClass ALTERNATIVE_SUPPLY = eINSTANCE.getAlternativeSupply();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__KIND = eINSTANCE.getAlternativeSupply_Kind();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__PRICE = eINSTANCE.getAlternativeSupply_Price();

		/**
		 * The meta object literal for the '<em><b>Capital</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__CAPITAL = eINSTANCE.getAlternativeSupply_Capital();

		/**
		 * The meta object literal for the '<em><b>Capital Life</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__CAPITAL_LIFE = eINSTANCE.getAlternativeSupply_CapitalLife();

		/**
		 * The meta object literal for the '<em><b>Yearly Cost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__YEARLY_COST = eINSTANCE.getAlternativeSupply_YearlyCost();

		/**
		 * The meta object literal for the '<em><b>Energy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__ENERGY = eINSTANCE.getAlternativeSupply_Energy();

		/**
		 * The meta object literal for the '<em><b>Reliability</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__RELIABILITY = eINSTANCE.getAlternativeSupply_Reliability();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALTERNATIVE_SUPPLY__SOURCE = eINSTANCE.getAlternativeSupply_Source();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.EconomyImpl <em>Economy</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.EconomyImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getEconomy()
		 * @generated
		 */
		EClass ECONOMY = eINSTANCE.getEconomy();

		/**
		 * The meta object literal for the '<em><b>Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__BASIS = eINSTANCE.getEconomy_Basis();

		/**
		 * The meta object literal for the '<em><b>Discount Rate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__DISCOUNT_RATE = eINSTANCE.getEconomy_DiscountRate();

		/**
		 * The meta object literal for the '<em><b>Inflation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__INFLATION = eINSTANCE.getEconomy_Inflation();

		/**
		 * The meta object literal for the '<em><b>Horizon</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__HORIZON = eINSTANCE.getEconomy_Horizon();

		/**
		 * The meta object literal for the '<em><b>Base Year</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__BASE_YEAR = eINSTANCE.getEconomy_BaseYear();

		/**
		 * The meta object literal for the '<em><b>Energy Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__ENERGY_PRICE = eINSTANCE.getEconomy_EnergyPrice();

		/**
		 * The meta object literal for the '<em><b>Labour Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__LABOUR_PRICE = eINSTANCE.getEconomy_LabourPrice();

		/**
		 * The meta object literal for the '<em><b>Tariff</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__TARIFF = eINSTANCE.getEconomy_Tariff();

		/**
		 * The meta object literal for the '<em><b>People</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ECONOMY__PEOPLE = eINSTANCE.getEconomy_People();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.OptionImpl <em>Option</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.OptionImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getOption()
		 * @generated
		 */
		EClass OPTION = eINSTANCE.getOption();

		/**
		 * The meta object literal for the '<em><b>Active</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPTION__ACTIVE = eINSTANCE.getOption_Active();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPTION__REASON = eINSTANCE.getOption_Reason();

		/**
		 * The meta object literal for the '<em><b>Changes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPTION__CHANGES = eINSTANCE.getOption_Changes();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.StageImpl <em>Stage</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.StageImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getStage()
		 * @generated
		 */
		EClass STAGE = eINSTANCE.getStage();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STAGE__DATE = eINSTANCE.getStage_Date();

		/**
		 * The meta object literal for the '<em><b>Budget</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STAGE__BUDGET = eINSTANCE.getStage_Budget();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ChangeImpl <em>Change</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ChangeImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getChange()
		 * @generated
		 */
		EClass CHANGE = eINSTANCE.getChange();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CHANGE__ELEMENT = eINSTANCE.getChange_Element();

		/**
		 * The meta object literal for the '<em><b>Feature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANGE__FEATURE = eINSTANCE.getChange_Feature();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANGE__VALUE = eINSTANCE.getChange_Value();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.UpkeepTaskImpl <em>Upkeep Task</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.UpkeepTaskImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUpkeepTask()
		 * @generated
		 */
		EClass UPKEEP_TASK = eINSTANCE.getUpkeepTask();

		/**
		 * The meta object literal for the '<em><b>Elements</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference UPKEEP_TASK__ELEMENTS = eINSTANCE.getUpkeepTask_Elements();

		/**
		 * The meta object literal for the '<em><b>Interval</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__INTERVAL = eINSTANCE.getUpkeepTask_Interval();

		/**
		 * The meta object literal for the '<em><b>Due On</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__DUE_ON = eINSTANCE.getUpkeepTask_DueOn();

		/**
		 * The meta object literal for the '<em><b>After Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__AFTER_VOLUME = eINSTANCE.getUpkeepTask_AfterVolume();

		/**
		 * The meta object literal for the '<em><b>Before First Rain</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__BEFORE_FIRST_RAIN = eINSTANCE.getUpkeepTask_BeforeFirstRain();

		/**
		 * The meta object literal for the '<em><b>Last Done</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__LAST_DONE = eINSTANCE.getUpkeepTask_LastDone();

		/**
		 * The meta object literal for the '<em><b>Effort</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__EFFORT = eINSTANCE.getUpkeepTask_Effort();

		/**
		 * The meta object literal for the '<em><b>Cost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__COST = eINSTANCE.getUpkeepTask_Cost();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__WHO = eINSTANCE.getUpkeepTask_Who();

		/**
		 * The meta object literal for the '<em><b>Checklist</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__CHECKLIST = eINSTANCE.getUpkeepTask_Checklist();

		/**
		 * The meta object literal for the '<em><b>Spares</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__SPARES = eINSTANCE.getUpkeepTask_Spares();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__SOURCE = eINSTANCE.getUpkeepTask_Source();

		/**
		 * The meta object literal for the '<em><b>Hazard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute UPKEEP_TASK__HAZARD = eINSTANCE.getUpkeepTask_Hazard();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.SafetyMeasureImpl <em>Safety Measure</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.SafetyMeasureImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSafetyMeasure()
		 * @generated
		 */
		EClass SAFETY_MEASURE = eINSTANCE.getSafetyMeasure();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SAFETY_MEASURE__ELEMENT = eINSTANCE.getSafetyMeasure_Element();

		/**
		 * The meta object literal for the '<em><b>Hazard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAFETY_MEASURE__HAZARD = eINSTANCE.getSafetyMeasure_Hazard();

		/**
		 * The meta object literal for the '<em><b>Control</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAFETY_MEASURE__CONTROL = eINSTANCE.getSafetyMeasure_Control();

		/**
		 * The meta object literal for the '<em><b>Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAFETY_MEASURE__LIMIT = eINSTANCE.getSafetyMeasure_Limit();

		/**
		 * The meta object literal for the '<em><b>Check</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAFETY_MEASURE__CHECK = eINSTANCE.getSafetyMeasure_Check();

		/**
		 * The meta object literal for the '<em><b>Action</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAFETY_MEASURE__ACTION = eINSTANCE.getSafetyMeasure_Action();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAFETY_MEASURE__WHO = eINSTANCE.getSafetyMeasure_Who();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.InspectionImpl <em>Inspection</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.InspectionImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getInspection()
		 * @generated
		 */
		EClass INSPECTION = eINSTANCE.getInspection();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__DATE = eINSTANCE.getInspection_Date();

		/**
		 * The meta object literal for the '<em><b>Inspector</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION__INSPECTOR = eINSTANCE.getInspection_Inspector();

		/**
		 * The meta object literal for the '<em><b>Answers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference INSPECTION__ANSWERS = eINSTANCE.getInspection_Answers();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.InspectionAnswerImpl <em>Inspection Answer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.InspectionAnswerImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getInspectionAnswer()
		 * @generated
		 */
		EClass INSPECTION_ANSWER = eINSTANCE.getInspectionAnswer();

		/**
		 * The meta object literal for the '<em><b>Question</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__QUESTION = eINSTANCE.getInspectionAnswer_Question();

		/**
		 * The meta object literal for the '<em><b>Answer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__ANSWER = eINSTANCE.getInspectionAnswer_Answer();

		/**
		 * The meta object literal for the '<em><b>Remark</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INSPECTION_ANSWER__REMARK = eINSTANCE.getInspectionAnswer_Remark();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ReadingImpl <em>Reading</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ReadingImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getReading()
		 * @generated
		 */
		EClass READING = eINSTANCE.getReading();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__DATE = eINSTANCE.getReading_Date();

		/**
		 * The meta object literal for the '<em><b>Time</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__TIME = eINSTANCE.getReading_Time();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__KIND = eINSTANCE.getReading_Kind();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VALUE = eINSTANCE.getReading_Value();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference READING__ELEMENT = eINSTANCE.getReading_Element();

		/**
		 * The meta object literal for the '<em><b>Reader</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__READER = eINSTANCE.getReading_Reader();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.WaterTestImpl <em>Water Test</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.WaterTestImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getWaterTest()
		 * @generated
		 */
		EClass WATER_TEST = eINSTANCE.getWaterTest();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__DATE = eINSTANCE.getWaterTest_Date();

		/**
		 * The meta object literal for the '<em><b>Parameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__PARAMETER = eINSTANCE.getWaterTest_Parameter();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__VALUE = eINSTANCE.getWaterTest_Value();

		/**
		 * The meta object literal for the '<em><b>Below Detection</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__BELOW_DETECTION = eINSTANCE.getWaterTest_BelowDetection();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__UNIT = eINSTANCE.getWaterTest_Unit();

		/**
		 * The meta object literal for the '<em><b>Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__LIMIT = eINSTANCE.getWaterTest_Limit();

		/**
		 * The meta object literal for the '<em><b>Limit Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__LIMIT_SOURCE = eINSTANCE.getWaterTest_LimitSource();

		/**
		 * The meta object literal for the '<em><b>Laboratory</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__LABORATORY = eINSTANCE.getWaterTest_Laboratory();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WATER_TEST__ELEMENT = eINSTANCE.getWaterTest_Element();

		/**
		 * The meta object literal for the '<em><b>Action</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WATER_TEST__ACTION = eINSTANCE.getWaterTest_Action();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.IncidentImpl <em>Incident</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.IncidentImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIncident()
		 * @generated
		 */
		EClass INCIDENT = eINSTANCE.getIncident();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__KIND = eINSTANCE.getIncident_Kind();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__FROM = eINSTANCE.getIncident_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__TO = eINSTANCE.getIncident_To();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference INCIDENT__ELEMENT = eINSTANCE.getIncident_Element();

		/**
		 * The meta object literal for the '<em><b>Volume Lost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__VOLUME_LOST = eINSTANCE.getIncident_VolumeLost();

		/**
		 * The meta object literal for the '<em><b>Action</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__ACTION = eINSTANCE.getIncident_Action();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.SharedSchemeImpl <em>Shared Scheme</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.SharedSchemeImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSharedScheme()
		 * @generated
		 */
		EClass SHARED_SCHEME = eINSTANCE.getSharedScheme();

		/**
		 * The meta object literal for the '<em><b>Families</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHARED_SCHEME__FAMILIES = eINSTANCE.getSharedScheme_Families();

		/**
		 * The meta object literal for the '<em><b>People Per Family</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHARED_SCHEME__PEOPLE_PER_FAMILY = eINSTANCE.getSharedScheme_PeoplePerFamily();

		/**
		 * The meta object literal for the '<em><b>Key Holder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHARED_SCHEME__KEY_HOLDER = eINSTANCE.getSharedScheme_KeyHolder();

		/**
		 * The meta object literal for the '<em><b>Ration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHARED_SCHEME__RATION = eINSTANCE.getSharedScheme_Ration();

		/**
		 * The meta object literal for the '<em><b>Monthly Fee</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHARED_SCHEME__MONTHLY_FEE = eINSTANCE.getSharedScheme_MonthlyFee();

		/**
		 * The meta object literal for the '<em><b>Night Loss</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHARED_SCHEME__NIGHT_LOSS = eINSTANCE.getSharedScheme_NightLoss();

		/**
		 * The meta object literal for the '<em><b>Cash Book</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHARED_SCHEME__CASH_BOOK = eINSTANCE.getSharedScheme_CashBook();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.CashEntryImpl <em>Cash Entry</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.CashEntryImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCashEntry()
		 * @generated
		 */
		EClass CASH_ENTRY = eINSTANCE.getCashEntry();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASH_ENTRY__DATE = eINSTANCE.getCashEntry_Date();

		/**
		 * The meta object literal for the '<em><b>Amount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASH_ENTRY__AMOUNT = eINSTANCE.getCashEntry_Amount();

		/**
		 * The meta object literal for the '<em><b>What</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASH_ENTRY__WHAT = eINSTANCE.getCashEntry_What();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASH_ENTRY__WHO = eINSTANCE.getCashEntry_Who();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.RemarkImpl <em>Remark</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.RemarkImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRemark()
		 * @generated
		 */
		EClass REMARK = eINSTANCE.getRemark();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__KIND = eINSTANCE.getRemark_Kind();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference REMARK__ELEMENT = eINSTANCE.getRemark_Element();

		/**
		 * The meta object literal for the '<em><b>Author</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__AUTHOR = eINSTANCE.getRemark_Author();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__ROLE = eINSTANCE.getRemark_Role();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__DATE = eINSTANCE.getRemark_Date();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__TEXT = eINSTANCE.getRemark_Text();

		/**
		 * The meta object literal for the '<em><b>Fingerprint</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__FINGERPRINT = eINSTANCE.getRemark_Fingerprint();

		/**
		 * The meta object literal for the '<em><b>Rests On</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__RESTS_ON = eINSTANCE.getRemark_RestsOn();

		/**
		 * The meta object literal for the '<em><b>Settled</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute REMARK__SETTLED = eINSTANCE.getRemark_Settled();

		/**
		 * The meta object literal for the '<em><b>Replies</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference REMARK__REPLIES = eINSTANCE.getRemark_Replies();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.internal.impl.ExtensionEntryImpl <em>Extension Entry</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.internal.impl.ExtensionEntryImpl
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getExtensionEntry()
		 * @generated
		 */
		EClass EXTENSION_ENTRY = eINSTANCE.getExtensionEntry();

		/**
		 * The meta object literal for the '<em><b>Plugin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTENSION_ENTRY__PLUGIN = eINSTANCE.getExtensionEntry_Plugin();

		/**
		 * The meta object literal for the '<em><b>Schema</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTENSION_ENTRY__SCHEMA = eINSTANCE.getExtensionEntry_Schema();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTENSION_ENTRY__KEY = eINSTANCE.getExtensionEntry_Key();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTENSION_ENTRY__TYPE = eINSTANCE.getExtensionEntry_Type();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTENSION_ENTRY__VALUE = eINSTANCE.getExtensionEntry_Value();

		/**
		 * The meta object literal for the '<em><b>Element</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EXTENSION_ENTRY__ELEMENT = eINSTANCE.getExtensionEntry_Element();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.RainFormat <em>Rain Format</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.RainFormat
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRainFormat()
		 * @generated
		 */
		EEnum RAIN_FORMAT = eINSTANCE.getRainFormat();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.DepthUnit <em>Depth Unit</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.DepthUnit
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDepthUnit()
		 * @generated
		 */
		EEnum DEPTH_UNIT = eINSTANCE.getDepthUnit();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.GapMethod <em>Gap Method</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.GapMethod
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGapMethod()
		 * @generated
		 */
		EEnum GAP_METHOD = eINSTANCE.getGapMethod();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.Weekday <em>Weekday</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.Weekday
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getWeekday()
		 * @generated
		 */
		EEnum WEEKDAY = eINSTANCE.getWeekday();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.RoofMaterial <em>Roof Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.RoofMaterial
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRoofMaterial()
		 * @generated
		 */
		EEnum ROOF_MATERIAL = eINSTANCE.getRoofMaterial();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.RunoffBasis <em>Runoff Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.RunoffBasis
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRunoffBasis()
		 * @generated
		 */
		EEnum RUNOFF_BASIS = eINSTANCE.getRunoffBasis();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.Hazard <em>Hazard</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.Hazard
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHazard()
		 * @generated
		 */
		EEnum HAZARD = eINSTANCE.getHazard();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.GutterProfile <em>Gutter Profile</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.GutterProfile
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getGutterProfile()
		 * @generated
		 */
		EEnum GUTTER_PROFILE = eINSTANCE.getGutterProfile();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.OutletShape <em>Outlet Shape</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.OutletShape
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getOutletShape()
		 * @generated
		 */
		EEnum OUTLET_SHAPE = eINSTANCE.getOutletShape();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.TankKind <em>Tank Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.TankKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankKind()
		 * @generated
		 */
		EEnum TANK_KIND = eINSTANCE.getTankKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.TankMaterial <em>Tank Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.TankMaterial
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankMaterial()
		 * @generated
		 */
		EEnum TANK_MATERIAL = eINSTANCE.getTankMaterial();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.TankCover <em>Tank Cover</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.TankCover
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankCover()
		 * @generated
		 */
		EEnum TANK_COVER = eINSTANCE.getTankCover();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.PlaceInGround <em>Place In Ground</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.PlaceInGround
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPlaceInGround()
		 * @generated
		 */
		EEnum PLACE_IN_GROUND = eINSTANCE.getPlaceInGround();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.TankLinkKind <em>Tank Link Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.TankLinkKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTankLinkKind()
		 * @generated
		 */
		EEnum TANK_LINK_KIND = eINSTANCE.getTankLinkKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.RunUse <em>Run Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.RunUse
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRunUse()
		 * @generated
		 */
		EEnum RUN_USE = eINSTANCE.getRunUse();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.PipeMaterial <em>Pipe Material</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.PipeMaterial
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPipeMaterial()
		 * @generated
		 */
		EEnum PIPE_MATERIAL = eINSTANCE.getPipeMaterial();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.FittingKind <em>Fitting Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.FittingKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFittingKind()
		 * @generated
		 */
		EEnum FITTING_KIND = eINSTANCE.getFittingKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.PumpKind <em>Pump Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.PumpKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpKind()
		 * @generated
		 */
		EEnum PUMP_KIND = eINSTANCE.getPumpKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.PumpArrangement <em>Pump Arrangement</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.PumpArrangement
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPumpArrangement()
		 * @generated
		 */
		EEnum PUMP_ARRANGEMENT = eINSTANCE.getPumpArrangement();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.EnergySource <em>Energy Source</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.EnergySource
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getEnergySource()
		 * @generated
		 */
		EEnum ENERGY_SOURCE = eINSTANCE.getEnergySource();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.TapKind <em>Tap Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.TapKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTapKind()
		 * @generated
		 */
		EEnum TAP_KIND = eINSTANCE.getTapKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.Purpose <em>Purpose</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.Purpose
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPurpose()
		 * @generated
		 */
		EEnum PURPOSE = eINSTANCE.getPurpose();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.DisinfectantProduct <em>Disinfectant Product</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.DisinfectantProduct
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDisinfectantProduct()
		 * @generated
		 */
		EEnum DISINFECTANT_PRODUCT = eINSTANCE.getDisinfectantProduct();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.StrengthBasis <em>Strength Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.StrengthBasis
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getStrengthBasis()
		 * @generated
		 */
		EEnum STRENGTH_BASIS = eINSTANCE.getStrengthBasis();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.StepKind <em>Step Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.StepKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getStepKind()
		 * @generated
		 */
		EEnum STEP_KIND = eINSTANCE.getStepKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.RatingBasis <em>Rating Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.RatingBasis
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRatingBasis()
		 * @generated
		 */
		EEnum RATING_BASIS = eINSTANCE.getRatingBasis();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.PathogenGroup <em>Pathogen Group</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.PathogenGroup
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPathogenGroup()
		 * @generated
		 */
		EEnum PATHOGEN_GROUP = eINSTANCE.getPathogenGroup();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.CostCategory <em>Cost Category</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.CostCategory
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCostCategory()
		 * @generated
		 */
		EEnum COST_CATEGORY = eINSTANCE.getCostCategory();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.SupplyKind <em>Supply Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.SupplyKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSupplyKind()
		 * @generated
		 */
		EEnum SUPPLY_KIND = eINSTANCE.getSupplyKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.PriceBasis <em>Price Basis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.PriceBasis
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPriceBasis()
		 * @generated
		 */
		EEnum PRICE_BASIS = eINSTANCE.getPriceBasis();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.ReadingKind <em>Reading Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.ReadingKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getReadingKind()
		 * @generated
		 */
		EEnum READING_KIND = eINSTANCE.getReadingKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.WaterParameter <em>Water Parameter</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.WaterParameter
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getWaterParameter()
		 * @generated
		 */
		EEnum WATER_PARAMETER = eINSTANCE.getWaterParameter();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.IncidentKind <em>Incident Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.IncidentKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIncidentKind()
		 * @generated
		 */
		EEnum INCIDENT_KIND = eINSTANCE.getIncidentKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.RemarkKind <em>Remark Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.RemarkKind
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRemarkKind()
		 * @generated
		 */
		EEnum REMARK_KIND = eINSTANCE.getRemarkKind();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.ValueType <em>Value Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.ValueType
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getValueType()
		 * @generated
		 */
		EEnum VALUE_TYPE = eINSTANCE.getValueType();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.UnitPreference <em>Unit Preference</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.UnitPreference
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUnitPreference()
		 * @generated
		 */
		EEnum UNIT_PREFERENCE = eINSTANCE.getUnitPreference();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.TopUpSource <em>Top Up Source</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.TopUpSource
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTopUpSource()
		 * @generated
		 */
		EEnum TOP_UP_SOURCE = eINSTANCE.getTopUpSource();

		/**
		 * The meta object literal for the '{@link org.roofspring.site.CheckAnswer <em>Check Answer</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.site.CheckAnswer
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCheckAnswer()
		 * @generated
		 */
		EEnum CHECK_ANSWER = eINSTANCE.getCheckAnswer();

		/**
		 * The meta object literal for the '<em>Length</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLength()
		 * @generated
		 */
		EDataType LENGTH = eINSTANCE.getLength();

		/**
		 * The meta object literal for the '<em>Level</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getLevel()
		 * @generated
		 */
		EDataType LEVEL = eINSTANCE.getLevel();

		/**
		 * The meta object literal for the '<em>Bore</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getBore()
		 * @generated
		 */
		EDataType BORE = eINSTANCE.getBore();

		/**
		 * The meta object literal for the '<em>Rain Depth</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRainDepth()
		 * @generated
		 */
		EDataType RAIN_DEPTH = eINSTANCE.getRainDepth();

		/**
		 * The meta object literal for the '<em>Particle Size</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getParticleSize()
		 * @generated
		 */
		EDataType PARTICLE_SIZE = eINSTANCE.getParticleSize();

		/**
		 * The meta object literal for the '<em>Head</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHead()
		 * @generated
		 */
		EDataType HEAD = eINSTANCE.getHead();

		/**
		 * The meta object literal for the '<em>Area</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getArea()
		 * @generated
		 */
		EDataType AREA = eINSTANCE.getArea();

		/**
		 * The meta object literal for the '<em>Opening Area</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getOpeningArea()
		 * @generated
		 */
		EDataType OPENING_AREA = eINSTANCE.getOpeningArea();

		/**
		 * The meta object literal for the '<em>Volume</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getVolume()
		 * @generated
		 */
		EDataType VOLUME = eINSTANCE.getVolume();

		/**
		 * The meta object literal for the '<em>Small Volume</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSmallVolume()
		 * @generated
		 */
		EDataType SMALL_VOLUME = eINSTANCE.getSmallVolume();

		/**
		 * The meta object literal for the '<em>Flow</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getFlow()
		 * @generated
		 */
		EDataType FLOW = eINSTANCE.getFlow();

		/**
		 * The meta object literal for the '<em>Tap Flow</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTapFlow()
		 * @generated
		 */
		EDataType TAP_FLOW = eINSTANCE.getTapFlow();

		/**
		 * The meta object literal for the '<em>Daily Volume</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDailyVolume()
		 * @generated
		 */
		EDataType DAILY_VOLUME = eINSTANCE.getDailyVolume();

		/**
		 * The meta object literal for the '<em>Velocity</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getVelocity()
		 * @generated
		 */
		EDataType VELOCITY = eINSTANCE.getVelocity();

		/**
		 * The meta object literal for the '<em>Pressure</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPressure()
		 * @generated
		 */
		EDataType PRESSURE = eINSTANCE.getPressure();

		/**
		 * The meta object literal for the '<em>Pressure Head</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPressureHead()
		 * @generated
		 */
		EDataType PRESSURE_HEAD = eINSTANCE.getPressureHead();

		/**
		 * The meta object literal for the '<em>Temperature</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTemperature()
		 * @generated
		 */
		EDataType TEMPERATURE = eINSTANCE.getTemperature();

		/**
		 * The meta object literal for the '<em>Power</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getPower()
		 * @generated
		 */
		EDataType POWER = eINSTANCE.getPower();

		/**
		 * The meta object literal for the '<em>Specific Energy</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSpecificEnergy()
		 * @generated
		 */
		EDataType SPECIFIC_ENERGY = eINSTANCE.getSpecificEnergy();

		/**
		 * The meta object literal for the '<em>Seconds</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getSeconds()
		 * @generated
		 */
		EDataType SECONDS = eINSTANCE.getSeconds();

		/**
		 * The meta object literal for the '<em>Minutes</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMinutes()
		 * @generated
		 */
		EDataType MINUTES = eINSTANCE.getMinutes();

		/**
		 * The meta object literal for the '<em>Hours</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getHours()
		 * @generated
		 */
		EDataType HOURS = eINSTANCE.getHours();

		/**
		 * The meta object literal for the '<em>Days</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDays()
		 * @generated
		 */
		EDataType DAYS = eINSTANCE.getDays();

		/**
		 * The meta object literal for the '<em>Years</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getYears()
		 * @generated
		 */
		EDataType YEARS = eINSTANCE.getYears();

		/**
		 * The meta object literal for the '<em>Intensity</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getIntensity()
		 * @generated
		 */
		EDataType INTENSITY = eINSTANCE.getIntensity();

		/**
		 * The meta object literal for the '<em>Concentration</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getConcentration()
		 * @generated
		 */
		EDataType CONCENTRATION = eINSTANCE.getConcentration();

		/**
		 * The meta object literal for the '<em>Uv Dose</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUvDose()
		 * @generated
		 */
		EDataType UV_DOSE = eINSTANCE.getUvDose();

		/**
		 * The meta object literal for the '<em>Turbidity</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTurbidity()
		 * @generated
		 */
		EDataType TURBIDITY = eINSTANCE.getTurbidity();

		/**
		 * The meta object literal for the '<em>Density</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDensity()
		 * @generated
		 */
		EDataType DENSITY = eINSTANCE.getDensity();

		/**
		 * The meta object literal for the '<em>Mass</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMass()
		 * @generated
		 */
		EDataType MASS = eINSTANCE.getMass();

		/**
		 * The meta object literal for the '<em>Rotational Speed</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRotationalSpeed()
		 * @generated
		 */
		EDataType ROTATIONAL_SPEED = eINSTANCE.getRotationalSpeed();

		/**
		 * The meta object literal for the '<em>Angle</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getAngle()
		 * @generated
		 */
		EDataType ANGLE = eINSTANCE.getAngle();

		/**
		 * The meta object literal for the '<em>Rate</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getRate()
		 * @generated
		 */
		EDataType RATE = eINSTANCE.getRate();

		/**
		 * The meta object literal for the '<em>Money</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMoney()
		 * @generated
		 */
		EDataType MONEY = eINSTANCE.getMoney();

		/**
		 * The meta object literal for the '<em>Unit Cost</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getUnitCost()
		 * @generated
		 */
		EDataType UNIT_COST = eINSTANCE.getUnitCost();

		/**
		 * The meta object literal for the '<em>Energy Cost</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getEnergyCost()
		 * @generated
		 */
		EDataType ENERGY_COST = eINSTANCE.getEnergyCost();

		/**
		 * The meta object literal for the '<em>Coefficient</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getCoefficient()
		 * @generated
		 */
		EDataType COEFFICIENT = eINSTANCE.getCoefficient();

		/**
		 * The meta object literal for the '<em>Share</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getShare()
		 * @generated
		 */
		EDataType SHARE = eINSTANCE.getShare();

		/**
		 * The meta object literal for the '<em>Measurement</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.roofspring.quantity.Quantity
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getMeasurement()
		 * @generated
		 */
		EDataType MEASUREMENT = eINSTANCE.getMeasurement();

		/**
		 * The meta object literal for the '<em>Date</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalDate
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDate()
		 * @generated
		 */
		EDataType DATE = eINSTANCE.getDate();

		/**
		 * The meta object literal for the '<em>Day Of Year</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.MonthDay
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getDayOfYear()
		 * @generated
		 */
		EDataType DAY_OF_YEAR = eINSTANCE.getDayOfYear();

		/**
		 * The meta object literal for the '<em>Time Of Day</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see java.time.LocalTime
		 * @see org.roofspring.site.internal.impl.SitePackageImpl#getTimeOfDay()
		 * @generated
		 */
		EDataType TIME_OF_DAY = eINSTANCE.getTimeOfDay();

	}

} //SitePackage

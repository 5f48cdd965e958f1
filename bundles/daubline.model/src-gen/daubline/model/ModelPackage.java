/**
 */
package daubline.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * @see daubline.model.ModelFactory
 * @model kind="package"
 * @generated
 */
public interface ModelPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:daubline:study";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "daubline";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ModelPackage eINSTANCE = daubline.model.impl.ModelPackageImpl.init();

	/**
	 * The meta object id for the '{@link daubline.model.impl.IdentifiedImpl <em>Identified</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.IdentifiedImpl
	 * @see daubline.model.impl.ModelPackageImpl#getIdentified()
	 * @generated
	 */
	int IDENTIFIED = 0;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED__ID = 0;

	/**
	 * The number of structural features of the '<em>Identified</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IDENTIFIED_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link daubline.model.impl.NamedImpl <em>Named</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.NamedImpl
	 * @see daubline.model.impl.ModelPackageImpl#getNamed()
	 * @generated
	 */
	int NAMED = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NAME = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED__NOTE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Named</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NAMED_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link daubline.model.impl.StudyImpl <em>Study</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.StudyImpl
	 * @see daubline.model.impl.ModelPackageImpl#getStudy()
	 * @generated
	 */
	int STUDY = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__FORMAT = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__QUESTION = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Language</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__LANGUAGE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Licence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__LICENCE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Created On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__CREATED_ON = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>People</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__PEOPLE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Citations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__CITATIONS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Variables</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__VARIABLES = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Residue Classes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__RESIDUE_CLASSES = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__LOTS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Reconstructions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__RECONSTRUCTIONS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Builds</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__BUILDS = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__FILES = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__SETTINGS = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Mappings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__MAPPINGS = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Hazards</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__HAZARDS = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Permissions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__PERMISSIONS = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Sites</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__SITES = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Series</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__SERIES = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Blind Recordings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY__BLIND_RECORDINGS = NAMED_FEATURE_COUNT + 19;

	/**
	 * The number of structural features of the '<em>Study</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STUDY_FEATURE_COUNT = NAMED_FEATURE_COUNT + 20;

	/**
	 * The meta object id for the '{@link daubline.model.impl.PersonImpl <em>Person</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.PersonImpl
	 * @see daubline.model.impl.ModelPackageImpl#getPerson()
	 * @generated
	 */
	int PERSON = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__ROLE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Smelts Before</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__SMELTS_BEFORE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>May Publish Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__MAY_PUBLISH_NAME = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>May Publish Photograph</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__MAY_PUBLISH_PHOTOGRAPH = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Person</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.CitationImpl <em>Citation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.CitationImpl
	 * @see daubline.model.impl.ModelPackageImpl#getCitation()
	 * @generated
	 */
	int CITATION = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Authors</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__AUTHORS = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__YEAR = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__TITLE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Container</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__CONTAINER = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__VOLUME = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Pages</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__PAGES = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Publisher</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__PUBLISHER = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Doi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__DOI = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Url</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__URL = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__KIND = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Editors</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__EDITORS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Issue</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__ISSUE = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__PLACE = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Isbn</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION__ISBN = NAMED_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Citation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CITATION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 14;

	/**
	 * The meta object id for the '{@link daubline.model.impl.VariableDefinitionImpl <em>Variable Definition</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.VariableDefinitionImpl
	 * @see daubline.model.impl.ModelPackageImpl#getVariableDefinition()
	 * @generated
	 */
	int VARIABLE_DEFINITION = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__NAME = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__GROUP = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__TYPE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__QUANTITY = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__UNIT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__LOW = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__HIGH = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Stages</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__STAGES = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Categories</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__CATEGORIES = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Evidenced By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__EVIDENCED_BY = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Meaning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__MEANING = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION__SOURCE = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Variable Definition</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VARIABLE_DEFINITION_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ResidueClassImpl <em>Residue Class</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ResidueClassImpl
	 * @see daubline.model.impl.ModelPackageImpl#getResidueClass()
	 * @generated
	 */
	int RESIDUE_CLASS = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_CLASS__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_CLASS__NAME = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Definition</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_CLASS__DEFINITION = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_CLASS__SOURCE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Residue Class</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_CLASS_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SettingImpl <em>Setting</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SettingImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSetting()
	 * @generated
	 */
	int SETTING = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__KEY = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__VALUE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__UNIT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING__SOURCE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Setting</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETTING_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ImportMappingImpl <em>Import Mapping</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ImportMappingImpl
	 * @see daubline.model.impl.ModelPackageImpl#getImportMapping()
	 * @generated
	 */
	int IMPORT_MAPPING = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IMPORT_MAPPING__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IMPORT_MAPPING__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IMPORT_MAPPING__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Target</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IMPORT_MAPPING__TARGET = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IMPORT_MAPPING__SETTINGS = NAMED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Import Mapping</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int IMPORT_MAPPING_FEATURE_COUNT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link daubline.model.impl.HazardImpl <em>Hazard</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.HazardImpl
	 * @see daubline.model.impl.ModelPackageImpl#getHazard()
	 * @generated
	 */
	int HAZARD = 9;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__WHO = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Control</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__CONTROL = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Owner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__OWNER = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Review On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__REVIEW_ON = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Not Applicable Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD__NOT_APPLICABLE_BECAUSE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Hazard</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HAZARD_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link daubline.model.impl.PermissionImpl <em>Permission</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.PermissionImpl
	 * @see daubline.model.impl.ModelPackageImpl#getPermission()
	 * @generated
	 */
	int PERMISSION = 10;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Reference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__REFERENCE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Issuer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__ISSUER = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Valid From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__VALID_FROM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Valid Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION__VALID_UNTIL = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Permission</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERMISSION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ReadingImpl <em>Reading</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ReadingImpl
	 * @see daubline.model.impl.ModelPackageImpl#getReading()
	 * @generated
	 */
	int READING = 11;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VARIABLE = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__KIND = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__TYPED = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__UNIT = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VALUE = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__LOW = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__HIGH = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__SIGMA = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CATEGORY = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__HOW = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__BY = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__AT = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CITATION = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__PAGE = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__VERBATIM = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__CONFIDENCE = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__SAMPLING_FRACTION = IDENTIFIED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__PICKED = IDENTIFIED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__PICKED_BECAUSE = IDENTIFIED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__NOTE = IDENTIFIED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING__EARLIER = IDENTIFIED_FEATURE_COUNT + 20;

	/**
	 * The number of structural features of the '<em>Reading</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int READING_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 21;

	/**
	 * The meta object id for the '{@link daubline.model.impl.EarlierImpl <em>Earlier</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.EarlierImpl
	 * @see daubline.model.impl.ModelPackageImpl#getEarlier()
	 * @generated
	 */
	int EARLIER = 12;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__TYPED = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__UNIT = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__KIND = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__VALUE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__BY = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__UNTIL = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Change</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER__CHANGE = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Earlier</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EARLIER_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ClaimImpl <em>Claim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ClaimImpl
	 * @see daubline.model.impl.ModelPackageImpl#getClaim()
	 * @generated
	 */
	int CLAIM = 13;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Preservation Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PRESERVATION_LIMIT = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Limit Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__LIMIT_BECAUSE = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Measurement</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__MEASUREMENT = READING_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Formula</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__FORMULA = READING_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Inputs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__INPUTS = READING_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__BLINDLY = READING_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Claim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_FEATURE_COUNT = READING_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ClaimInputImpl <em>Claim Input</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ClaimInputImpl
	 * @see daubline.model.impl.ModelPackageImpl#getClaimInput()
	 * @generated
	 */
	int CLAIM_INPUT = 14;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Symbol</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT__SYMBOL = READING_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Claim Input</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_INPUT_FEATURE_COUNT = READING_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link daubline.model.impl.StagedValueImpl <em>Staged Value</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.StagedValueImpl
	 * @see daubline.model.impl.ModelPackageImpl#getStagedValue()
	 * @generated
	 */
	int STAGED_VALUE = 15;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Stage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE__STAGE = READING_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Staged Value</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STAGED_VALUE_FEATURE_COUNT = READING_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ChoiceImpl <em>Choice</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ChoiceImpl
	 * @see daubline.model.impl.ModelPackageImpl#getChoice()
	 * @generated
	 */
	int CHOICE = 16;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__BASIS = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE__BECAUSE = READING_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Choice</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHOICE_FEATURE_COUNT = READING_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link daubline.model.impl.PredictionImpl <em>Prediction</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.PredictionImpl
	 * @see daubline.model.impl.ModelPackageImpl#getPrediction()
	 * @generated
	 */
	int PREDICTION = 17;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Stated On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__STATED_ON = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__LOCKED = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reconstruction</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__RECONSTRUCTION = READING_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__ENGINE = READING_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Revises</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION__REVISES = READING_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Prediction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PREDICTION_FEATURE_COUNT = READING_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ResidueMassImpl <em>Residue Mass</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ResidueMassImpl
	 * @see daubline.model.impl.ModelPackageImpl#getResidueMass()
	 * @generated
	 */
	int RESIDUE_MASS = 18;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Residue Class</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__RESIDUE_CLASS = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__COUNT = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS__BLINDLY = READING_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Residue Mass</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RESIDUE_MASS_FEATURE_COUNT = READING_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ComponentImpl <em>Component</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ComponentImpl
	 * @see daubline.model.impl.ModelPackageImpl#getComponent()
	 * @generated
	 */
	int COMPONENT = 19;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Symbol</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__SYMBOL = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Printed As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT__PRINTED_AS = READING_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Component</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPONENT_FEATURE_COUNT = READING_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link daubline.model.impl.AnalysisImpl <em>Analysis</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.AnalysisImpl
	 * @see daubline.model.impl.ModelPackageImpl#getAnalysis()
	 * @generated
	 */
	int ANALYSIS = 20;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Sample</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__SAMPLE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__MATERIAL = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Specimen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__SPECIMEN = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__METHOD = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Instrument</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__INSTRUMENT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Standards</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__STANDARDS = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Conditions</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__CONDITIONS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Accuracy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__ACCURACY = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Laboratory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__LABORATORY = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__ON = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Areas</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__AREAS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Iron Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__IRON_BASIS = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Replicate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__REPLICATE = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Total Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__TOTAL_TYPED = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__TOTAL = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__CITATION = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__PAGE = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>File</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__FILE = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Components</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS__COMPONENTS = NAMED_FEATURE_COUNT + 18;

	/**
	 * The number of structural features of the '<em>Analysis</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ANALYSIS_FEATURE_COUNT = NAMED_FEATURE_COUNT + 19;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SheetImpl <em>Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SheetImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSheet()
	 * @generated
	 */
	int SHEET = 21;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Recorded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__RECORDED_BY = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Recorded On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__RECORDED_ON = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Blind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__BLIND = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__SAMPLING_FRACTION = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__CLAIMS = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Residues</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__RESIDUES = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Analyses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__ANALYSES = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__FILES = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Zones</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__ZONES = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Spread</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__SPREAD = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET__BLINDLY = NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHEET_FEATURE_COUNT = NAMED_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link daubline.model.impl.EvidenceSheetImpl <em>Evidence Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.EvidenceSheetImpl
	 * @see daubline.model.impl.ModelPackageImpl#getEvidenceSheet()
	 * @generated
	 */
	int EVIDENCE_SHEET = 22;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__ID = SHEET__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__NAME = SHEET__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__NOTE = SHEET__NOTE;

	/**
	 * The feature id for the '<em><b>Recorded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__RECORDED_BY = SHEET__RECORDED_BY;

	/**
	 * The feature id for the '<em><b>Recorded On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__RECORDED_ON = SHEET__RECORDED_ON;

	/**
	 * The feature id for the '<em><b>Blind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__BLIND = SHEET__BLIND;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__SAMPLING_FRACTION = SHEET__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__CLAIMS = SHEET__CLAIMS;

	/**
	 * The feature id for the '<em><b>Residues</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__RESIDUES = SHEET__RESIDUES;

	/**
	 * The feature id for the '<em><b>Analyses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__ANALYSES = SHEET__ANALYSES;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__FILES = SHEET__FILES;

	/**
	 * The feature id for the '<em><b>Zones</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__ZONES = SHEET__ZONES;

	/**
	 * The feature id for the '<em><b>Spread</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__SPREAD = SHEET__SPREAD;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__BLINDLY = SHEET__BLINDLY;

	/**
	 * The feature id for the '<em><b>Feature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET__FEATURE = SHEET_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Evidence Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EVIDENCE_SHEET_FEATURE_COUNT = SHEET_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link daubline.model.impl.RemainsSheetImpl <em>Remains Sheet</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.RemainsSheetImpl
	 * @see daubline.model.impl.ModelPackageImpl#getRemainsSheet()
	 * @generated
	 */
	int REMAINS_SHEET = 23;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__ID = SHEET__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__NAME = SHEET__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__NOTE = SHEET__NOTE;

	/**
	 * The feature id for the '<em><b>Recorded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__RECORDED_BY = SHEET__RECORDED_BY;

	/**
	 * The feature id for the '<em><b>Recorded On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__RECORDED_ON = SHEET__RECORDED_ON;

	/**
	 * The feature id for the '<em><b>Blind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__BLIND = SHEET__BLIND;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__SAMPLING_FRACTION = SHEET__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__CLAIMS = SHEET__CLAIMS;

	/**
	 * The feature id for the '<em><b>Residues</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__RESIDUES = SHEET__RESIDUES;

	/**
	 * The feature id for the '<em><b>Analyses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__ANALYSES = SHEET__ANALYSES;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__FILES = SHEET__FILES;

	/**
	 * The feature id for the '<em><b>Zones</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__ZONES = SHEET__ZONES;

	/**
	 * The feature id for the '<em><b>Spread</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__SPREAD = SHEET__SPREAD;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET__BLINDLY = SHEET__BLINDLY;

	/**
	 * The number of structural features of the '<em>Remains Sheet</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int REMAINS_SHEET_FEATURE_COUNT = SHEET_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link daubline.model.impl.BlindRecordingImpl <em>Blind Recording</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.BlindRecordingImpl
	 * @see daubline.model.impl.ModelPackageImpl#getBlindRecording()
	 * @generated
	 */
	int BLIND_RECORDING = 24;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BLIND_RECORDING__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BLIND_RECORDING__BY = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Begun</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BLIND_RECORDING__BEGUN = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Ended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BLIND_RECORDING__ENDED = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Ended By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BLIND_RECORDING__ENDED_BY = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Blind Recording</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BLIND_RECORDING_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.WallZoneImpl <em>Wall Zone</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.WallZoneImpl
	 * @see daubline.model.impl.ModelPackageImpl#getWallZone()
	 * @generated
	 */
	int WALL_ZONE = 25;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Clock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__CLOCK = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__LOW = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__HIGH = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>State</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__STATE = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__NOTE = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE__BLINDLY = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Wall Zone</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WALL_ZONE_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SpreadSquareImpl <em>Spread Square</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SpreadSquareImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSpreadSquare()
	 * @generated
	 */
	int SPREAD_SQUARE = 26;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>East</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__EAST = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>North</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__NORTH = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Side</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__SIDE = READING_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Residue Class</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__RESIDUE_CLASS = READING_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE__BLINDLY = READING_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Spread Square</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPREAD_SQUARE_FEATURE_COUNT = READING_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SiteImpl <em>Site</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SiteImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSite()
	 * @generated
	 */
	int SITE = 27;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__PLACE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Region</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__REGION = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Country</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__COUNTRY = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Latitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__LATITUDE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Longitude</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__LONGITUDE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sensitive</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__SENSITIVE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Contexts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE__CONTEXTS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Site</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SITE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ContextImpl <em>Context</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ContextImpl
	 * @see daubline.model.impl.ModelPackageImpl#getContext()
	 * @generated
	 */
	int CONTEXT = 28;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Period</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__PERIOD = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Phase</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__PHASE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Deposit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__DEPOSIT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sheets</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT__SHEETS = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Context</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONTEXT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ReconstructionImpl <em>Reconstruction</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ReconstructionImpl
	 * @see daubline.model.impl.ModelPackageImpl#getReconstruction()
	 * @generated
	 */
	int RECONSTRUCTION = 29;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Hypothesis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__HYPOTHESIS = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Variant Of</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__VARIANT_OF = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sheets</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__SHEETS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Retired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__RETIRED = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Retired Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__RETIRED_BECAUSE = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Choices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION__CHOICES = NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Reconstruction</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RECONSTRUCTION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link daubline.model.impl.LotImpl <em>Lot</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.LotImpl
	 * @see daubline.model.impl.ModelPackageImpl#getLot()
	 * @generated
	 */
	int LOT = 30;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__MATERIAL = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Supplier</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__SUPPLIER = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Origin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__ORIGIN = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Delivered On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__DELIVERED_ON = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>From</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__FROM = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__VALUES = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Treatments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__TREATMENTS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Analyses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__ANALYSES = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Moisture Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__MOISTURE_BASIS = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Recipe</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT__RECIPE = NAMED_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Lot</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 10;

	/**
	 * The meta object id for the '{@link daubline.model.impl.TreatmentImpl <em>Treatment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.TreatmentImpl
	 * @see daubline.model.impl.ModelPackageImpl#getTreatment()
	 * @generated
	 */
	int TREATMENT = 31;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Step</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__STEP = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__ON = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Mass In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__MASS_IN = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Mass Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__MASS_OUT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__LOST = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__SIGMA = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__VALUES = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Bands</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT__BANDS = NAMED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Treatment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TREATMENT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SizeBandImpl <em>Size Band</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SizeBandImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSizeBand()
	 * @generated
	 */
	int SIZE_BAND = 32;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Mesh From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__MESH_FROM = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Mesh To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__MESH_TO = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND__LOT = READING_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Size Band</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIZE_BAND_FEATURE_COUNT = READING_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link daubline.model.impl.MixPartImpl <em>Mix Part</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.MixPartImpl
	 * @see daubline.model.impl.ModelPackageImpl#getMixPart()
	 * @generated
	 */
	int MIX_PART = 33;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Part</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__PART = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__LOT = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>By Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__BY_VOLUME = READING_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bulk Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART__BULK_DENSITY = READING_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Mix Part</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MIX_PART_FEATURE_COUNT = READING_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.FurnaceBuildImpl <em>Furnace Build</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.FurnaceBuildImpl
	 * @see daubline.model.impl.ModelPackageImpl#getFurnaceBuild()
	 * @generated
	 */
	int FURNACE_BUILD = 34;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Reconstruction</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__RECONSTRUCTION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Built On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__BUILT_ON = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__LOTS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__VALUES = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Log</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD__LOG = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Furnace Build</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FURNACE_BUILD_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SeriesImpl <em>Series</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SeriesImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSeries()
	 * @generated
	 */
	int SERIES = 35;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__QUESTION = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Plan</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__PLAN = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Budget</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__BUDGET = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Frozen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__FROZEN = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__SEED = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Stop Criteria</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__STOP_CRITERIA = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Factors</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__FACTORS = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Roles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__ROLES = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Trials</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__TRIALS = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Aim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__AIM = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Forbidden</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__FORBIDDEN = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Provisions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__PROVISIONS = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Labour</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__LABOUR = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Plans</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__PLANS = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Most Trials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__MOST_TRIALS = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Centre Trials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__CENTRE_TRIALS = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Repeat Trials</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__REPEAT_TRIALS = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Burns Per Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__BURNS_PER_DAY = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Furnace Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__FURNACE_RATIO = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Day Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES__DAY_RATIO = NAMED_FEATURE_COUNT + 19;

	/**
	 * The number of structural features of the '<em>Series</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SERIES_FEATURE_COUNT = NAMED_FEATURE_COUNT + 20;

	/**
	 * The meta object id for the '{@link daubline.model.impl.FactorImpl <em>Factor</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.FactorImpl
	 * @see daubline.model.impl.ModelPackageImpl#getFactor()
	 * @generated
	 */
	int FACTOR = 36;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACTOR__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACTOR__VARIABLE = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Levels</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACTOR__LEVELS = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Hard To Change</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACTOR__HARD_TO_CHANGE = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Daily</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACTOR__DAILY = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Factor</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACTOR_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ForbiddenCombinationImpl <em>Forbidden Combination</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ForbiddenCombinationImpl
	 * @see daubline.model.impl.ModelPackageImpl#getForbiddenCombination()
	 * @generated
	 */
	int FORBIDDEN_COMBINATION = 37;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FORBIDDEN_COMBINATION__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Conditions</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FORBIDDEN_COMBINATION__CONDITIONS = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FORBIDDEN_COMBINATION__BECAUSE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Forbidden Combination</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FORBIDDEN_COMBINATION_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ProvisionImpl <em>Provision</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ProvisionImpl
	 * @see daubline.model.impl.ModelPackageImpl#getProvision()
	 * @generated
	 */
	int PROVISION = 38;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__UNIT = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Available</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__AVAILABLE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Moisture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__MOISTURE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Dry Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__DRY_BASIS = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Losses</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__LOSSES = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reserve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__RESERVE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Once</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__ONCE = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Per Trial</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__PER_TRIAL = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Per Furnace</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__PER_FURNACE = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Per Refit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__PER_REFIT = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION__LOTS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Provision</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PROVISION_FEATURE_COUNT = NAMED_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link daubline.model.impl.LabourImpl <em>Labour</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.LabourImpl
	 * @see daubline.model.impl.ModelPackageImpl#getLabour()
	 * @generated
	 */
	int LABOUR = 39;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Team</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__TEAM = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>First Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__FIRST_DAY = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Last Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__LAST_DAY = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Weekdays</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__WEEKDAYS = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Days Off</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__DAYS_OFF = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Build Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__BUILD_DAYS = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Build People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__BUILD_PEOPLE = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Dry Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__DRY_DAYS = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Burn Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__BURN_DAYS = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Burn People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__BURN_PEOPLE = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Refit Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__REFIT_DAYS = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Refit People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__REFIT_PEOPLE = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Refit Dry Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__REFIT_DRY_DAYS = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Firings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__FIRINGS = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Failure Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__FAILURE_SHARE = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Assurance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__ASSURANCE = IDENTIFIED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Permissions</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR__PERMISSIONS = IDENTIFIED_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Labour</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LABOUR_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 17;

	/**
	 * The meta object id for the '{@link daubline.model.impl.FrozenPlanImpl <em>Frozen Plan</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.FrozenPlanImpl
	 * @see daubline.model.impl.ModelPackageImpl#getFrozenPlan()
	 * @generated
	 */
	int FROZEN_PLAN = 40;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Aim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__AIM = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Seed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__SEED = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Algorithm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__ALGORITHM = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__VERSION = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Frozen At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__FROZEN_AT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Engine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__ENGINE = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Furnace Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__FURNACE_RATIO = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Day Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__DAY_RATIO = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Restriction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__RESTRICTION = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Reasons</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__REASONS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Runs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN__RUNS = NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Frozen Plan</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FROZEN_PLAN_FEATURE_COUNT = NAMED_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link daubline.model.impl.PlannedRunImpl <em>Planned Run</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.PlannedRunImpl
	 * @see daubline.model.impl.ModelPackageImpl#getPlannedRun()
	 * @generated
	 */
	int PLANNED_RUN = 41;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__PLACE = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Furnace</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__FURNACE = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__DAY = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Trial</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__TRIAL = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Settings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__SETTINGS = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Deviation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN__DEVIATION = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Planned Run</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_RUN_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link daubline.model.impl.RoleAssignmentImpl <em>Role Assignment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.RoleAssignmentImpl
	 * @see daubline.model.impl.ModelPackageImpl#getRoleAssignment()
	 * @generated
	 */
	int ROLE_ASSIGNMENT = 42;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__ROLE = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Person</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__PERSON = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__FROM = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT__UNTIL = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Role Assignment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_ASSIGNMENT_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.TrialImpl <em>Trial</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.TrialImpl
	 * @see daubline.model.impl.ModelPackageImpl#getTrial()
	 * @generated
	 */
	int TRIAL = 43;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__NUMBER = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__KIND = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Status</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__STATUS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ON = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Build</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__BUILD = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reconstruction</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__RECONSTRUCTION = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Repeat Of</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__REPEAT_OF = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Leader</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LEADER = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>People</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PEOPLE = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LOTS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Excluded</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__EXCLUDED = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Excluded Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__EXCLUDED_BECAUSE = NAMED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Conclusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__CONCLUSION = NAMED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__VALUES = NAMED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Predictions</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PREDICTIONS = NAMED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Log</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LOG = NAMED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Loggers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__LOGGERS = NAMED_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__PIECES = NAMED_FEATURE_COUNT + 17;

	/**
	 * The feature id for the '<em><b>Remains</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__REMAINS = NAMED_FEATURE_COUNT + 18;

	/**
	 * The feature id for the '<em><b>Samples</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__SAMPLES = NAMED_FEATURE_COUNT + 19;

	/**
	 * The feature id for the '<em><b>Analyses</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__ANALYSES = NAMED_FEATURE_COUNT + 20;

	/**
	 * The feature id for the '<em><b>Files</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__FILES = NAMED_FEATURE_COUNT + 21;

	/**
	 * The feature id for the '<em><b>Visits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__VISITS = NAMED_FEATURE_COUNT + 22;

	/**
	 * The feature id for the '<em><b>Ready Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__READY_BECAUSE = NAMED_FEATURE_COUNT + 23;

	/**
	 * The feature id for the '<em><b>Measures</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL__MEASURES = NAMED_FEATURE_COUNT + 24;

	/**
	 * The number of structural features of the '<em>Trial</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRIAL_FEATURE_COUNT = NAMED_FEATURE_COUNT + 25;

	/**
	 * The meta object id for the '{@link daubline.model.impl.LogEntryImpl <em>Log Entry</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.LogEntryImpl
	 * @see daubline.model.impl.ModelPackageImpl#getLogEntry()
	 * @generated
	 */
	int LOG_ENTRY = 44;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__ID = IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__AT = IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Elapsed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__ELAPSED = IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__KIND = IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__TEXT = IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>About</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__ABOUT = IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Late</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__LATE = IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Inferred</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__INFERRED = IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Original</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__ORIGINAL = IDENTIFIED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__BY = IDENTIFIED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__VALUES = IDENTIFIED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Illegible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__ILLEGIBLE = IDENTIFIED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Checked By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__CHECKED_BY = IDENTIFIED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Checked On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__CHECKED_ON = IDENTIFIED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Scan</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY__SCAN = IDENTIFIED_FEATURE_COUNT + 13;

	/**
	 * The number of structural features of the '<em>Log Entry</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOG_ENTRY_FEATURE_COUNT = IDENTIFIED_FEATURE_COUNT + 14;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ChargeImpl <em>Charge</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ChargeImpl
	 * @see daubline.model.impl.ModelPackageImpl#getCharge()
	 * @generated
	 */
	int CHARGE = 45;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__ID = LOG_ENTRY__ID;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__AT = LOG_ENTRY__AT;

	/**
	 * The feature id for the '<em><b>Elapsed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__ELAPSED = LOG_ENTRY__ELAPSED;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__KIND = LOG_ENTRY__KIND;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__TEXT = LOG_ENTRY__TEXT;

	/**
	 * The feature id for the '<em><b>About</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__ABOUT = LOG_ENTRY__ABOUT;

	/**
	 * The feature id for the '<em><b>Late</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__LATE = LOG_ENTRY__LATE;

	/**
	 * The feature id for the '<em><b>Inferred</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__INFERRED = LOG_ENTRY__INFERRED;

	/**
	 * The feature id for the '<em><b>Original</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__ORIGINAL = LOG_ENTRY__ORIGINAL;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__BY = LOG_ENTRY__BY;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__VALUES = LOG_ENTRY__VALUES;

	/**
	 * The feature id for the '<em><b>Illegible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__ILLEGIBLE = LOG_ENTRY__ILLEGIBLE;

	/**
	 * The feature id for the '<em><b>Checked By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__CHECKED_BY = LOG_ENTRY__CHECKED_BY;

	/**
	 * The feature id for the '<em><b>Checked On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__CHECKED_ON = LOG_ENTRY__CHECKED_ON;

	/**
	 * The feature id for the '<em><b>Scan</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__SCAN = LOG_ENTRY__SCAN;

	/**
	 * The feature id for the '<em><b>Items</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE__ITEMS = LOG_ENTRY_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Charge</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_FEATURE_COUNT = LOG_ENTRY_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ChargeItemImpl <em>Charge Item</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ChargeItemImpl
	 * @see daubline.model.impl.ModelPackageImpl#getChargeItem()
	 * @generated
	 */
	int CHARGE_ITEM = 46;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__MATERIAL = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__LOT = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__COUNT = READING_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Unit Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__UNIT_MASS = READING_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Measure</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM__MEASURE = READING_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Charge Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHARGE_ITEM_FEATURE_COUNT = READING_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link daubline.model.impl.MeasureImpl <em>Measure</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.MeasureImpl
	 * @see daubline.model.impl.ModelPackageImpl#getMeasure()
	 * @generated
	 */
	int MEASURE = 47;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE__MATERIAL = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE__LOT = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Weighings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE__WEIGHINGS = NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Measure</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASURE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link daubline.model.impl.IncidentImpl <em>Incident</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.IncidentImpl
	 * @see daubline.model.impl.ModelPackageImpl#getIncident()
	 * @generated
	 */
	int INCIDENT = 48;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ID = LOG_ENTRY__ID;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__AT = LOG_ENTRY__AT;

	/**
	 * The feature id for the '<em><b>Elapsed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ELAPSED = LOG_ENTRY__ELAPSED;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__KIND = LOG_ENTRY__KIND;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__TEXT = LOG_ENTRY__TEXT;

	/**
	 * The feature id for the '<em><b>About</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ABOUT = LOG_ENTRY__ABOUT;

	/**
	 * The feature id for the '<em><b>Late</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__LATE = LOG_ENTRY__LATE;

	/**
	 * The feature id for the '<em><b>Inferred</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__INFERRED = LOG_ENTRY__INFERRED;

	/**
	 * The feature id for the '<em><b>Original</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ORIGINAL = LOG_ENTRY__ORIGINAL;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__BY = LOG_ENTRY__BY;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__VALUES = LOG_ENTRY__VALUES;

	/**
	 * The feature id for the '<em><b>Illegible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__ILLEGIBLE = LOG_ENTRY__ILLEGIBLE;

	/**
	 * The feature id for the '<em><b>Checked By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__CHECKED_BY = LOG_ENTRY__CHECKED_BY;

	/**
	 * The feature id for the '<em><b>Checked On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__CHECKED_ON = LOG_ENTRY__CHECKED_ON;

	/**
	 * The feature id for the '<em><b>Scan</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__SCAN = LOG_ENTRY__SCAN;

	/**
	 * The feature id for the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__DURATION = LOG_ENTRY_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Effect</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT__EFFECT = LOG_ENTRY_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Incident</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int INCIDENT_FEATURE_COUNT = LOG_ENTRY_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link daubline.model.impl.DataFileImpl <em>Data File</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.DataFileImpl
	 * @see daubline.model.impl.ModelPackageImpl#getDataFile()
	 * @generated
	 */
	int DATA_FILE = 49;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__PATH = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__SHA256 = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bytes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__BYTES = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__MEDIA_TYPE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__KIND = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Captured At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__CAPTURED_AT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__CAPTION = NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Rights</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__RIGHTS = NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Consent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__CONSENT = NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Measurements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__MEASUREMENTS = NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Clock Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__CLOCK_OFFSET = NAMED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE__BLINDLY = NAMED_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Data File</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DATA_FILE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 12;

	/**
	 * The meta object id for the '{@link daubline.model.impl.MeasurementImpl <em>Measurement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.MeasurementImpl
	 * @see daubline.model.impl.ModelPackageImpl#getMeasurement()
	 * @generated
	 */
	int MEASUREMENT = 50;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__ID = READING__ID;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__VARIABLE = READING__VARIABLE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__KIND = READING__KIND;

	/**
	 * The feature id for the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__TYPED = READING__TYPED;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__UNIT = READING__UNIT;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__VALUE = READING__VALUE;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__LOW = READING__LOW;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__HIGH = READING__HIGH;

	/**
	 * The feature id for the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__SIGMA = READING__SIGMA;

	/**
	 * The feature id for the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__CATEGORY = READING__CATEGORY;

	/**
	 * The feature id for the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__HOW = READING__HOW;

	/**
	 * The feature id for the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__BY = READING__BY;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__AT = READING__AT;

	/**
	 * The feature id for the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__CITATION = READING__CITATION;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__PAGE = READING__PAGE;

	/**
	 * The feature id for the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__VERBATIM = READING__VERBATIM;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__CONFIDENCE = READING__CONFIDENCE;

	/**
	 * The feature id for the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__SAMPLING_FRACTION = READING__SAMPLING_FRACTION;

	/**
	 * The feature id for the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__PICKED = READING__PICKED;

	/**
	 * The feature id for the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__PICKED_BECAUSE = READING__PICKED_BECAUSE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__NOTE = READING__NOTE;

	/**
	 * The feature id for the '<em><b>Earlier</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__EARLIER = READING__EARLIER;

	/**
	 * The feature id for the '<em><b>X1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__X1 = READING_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Y1</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__Y1 = READING_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>X2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__X2 = READING_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Y2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__Y2 = READING_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Scale</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__SCALE = READING_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Pointing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__POINTING = READING_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT__BLINDLY = READING_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Measurement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MEASUREMENT_FEATURE_COUNT = READING_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link daubline.model.impl.LoggerFileImpl <em>Logger File</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.LoggerFileImpl
	 * @see daubline.model.impl.ModelPackageImpl#getLoggerFile()
	 * @generated
	 */
	int LOGGER_FILE = 51;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__ID = DATA_FILE__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__NAME = DATA_FILE__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__NOTE = DATA_FILE__NOTE;

	/**
	 * The feature id for the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__PATH = DATA_FILE__PATH;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__SHA256 = DATA_FILE__SHA256;

	/**
	 * The feature id for the '<em><b>Bytes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__BYTES = DATA_FILE__BYTES;

	/**
	 * The feature id for the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__MEDIA_TYPE = DATA_FILE__MEDIA_TYPE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__KIND = DATA_FILE__KIND;

	/**
	 * The feature id for the '<em><b>Captured At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__CAPTURED_AT = DATA_FILE__CAPTURED_AT;

	/**
	 * The feature id for the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__CAPTION = DATA_FILE__CAPTION;

	/**
	 * The feature id for the '<em><b>Rights</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__RIGHTS = DATA_FILE__RIGHTS;

	/**
	 * The feature id for the '<em><b>Consent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__CONSENT = DATA_FILE__CONSENT;

	/**
	 * The feature id for the '<em><b>Measurements</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__MEASUREMENTS = DATA_FILE__MEASUREMENTS;

	/**
	 * The feature id for the '<em><b>Clock Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__CLOCK_OFFSET = DATA_FILE__CLOCK_OFFSET;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__BLINDLY = DATA_FILE__BLINDLY;

	/**
	 * The feature id for the '<em><b>Delimiter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__DELIMITER = DATA_FILE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Decimal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__DECIMAL = DATA_FILE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Header Rows</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__HEADER_ROWS = DATA_FILE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Time Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__TIME_COLUMN = DATA_FILE_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Time Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__TIME_FORMAT = DATA_FILE_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Start At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__START_AT = DATA_FILE_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__OFFSET = DATA_FILE_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Channels</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__CHANNELS = DATA_FILE_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Sync Mark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE__SYNC_MARK = DATA_FILE_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Logger File</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGER_FILE_FEATURE_COUNT = DATA_FILE_FEATURE_COUNT + 9;

	/**
	 * The meta object id for the '{@link daubline.model.impl.ChannelImpl <em>Channel</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.ChannelImpl
	 * @see daubline.model.impl.ModelPackageImpl#getChannel()
	 * @generated
	 */
	int CHANNEL = 52;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Column</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL__COLUMN = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL__VARIABLE = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL__UNIT = NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Channel</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANNEL_FEATURE_COUNT = NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link daubline.model.impl.PieceImpl <em>Piece</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.PieceImpl
	 * @see daubline.model.impl.ModelPackageImpl#getPiece()
	 * @generated
	 */
	int PIECE = 53;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Stage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__STAGE = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Values</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__VALUES = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Pieces</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__PIECES = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE__BLINDLY = NAMED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Piece</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PIECE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link daubline.model.impl.SampleImpl <em>Sample</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.SampleImpl
	 * @see daubline.model.impl.ModelPackageImpl#getSample()
	 * @generated
	 */
	int SAMPLE = 54;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__MATERIAL = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__QUESTION = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__PIECE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Taken On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__TAKEN_ON = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Stored At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__STORED_AT = NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Holder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__HOLDER = NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE__BLINDLY = NAMED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Sample</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SAMPLE_FEATURE_COUNT = NAMED_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link daubline.model.impl.VisitImpl <em>Visit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.model.impl.VisitImpl
	 * @see daubline.model.impl.ModelPackageImpl#getVisit()
	 * @generated
	 */
	int VISIT = 55;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__ID = NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__NAME = NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__NOTE = NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Due On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__DUE_ON = NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Visited On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__VISITED_ON = NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Not Visited Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__NOT_VISITED_BECAUSE = NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Ended Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__ENDED_BECAUSE = NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Remains</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT__REMAINS = NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Visit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VISIT_FEATURE_COUNT = NAMED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '<em>Basis</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.Basis
	 * @see daubline.model.impl.ModelPackageImpl#getBasis()
	 * @generated
	 */
	int BASIS = 56;

	/**
	 * The meta object id for the '<em>Confidence</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.Confidence
	 * @see daubline.model.impl.ModelPackageImpl#getConfidence()
	 * @generated
	 */
	int CONFIDENCE = 57;

	/**
	 * The meta object id for the '<em>How Got</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.HowGot
	 * @see daubline.model.impl.ModelPackageImpl#getHowGot()
	 * @generated
	 */
	int HOW_GOT = 58;

	/**
	 * The meta object id for the '<em>Iron Basis</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.IronBasis
	 * @see daubline.model.impl.ModelPackageImpl#getIronBasis()
	 * @generated
	 */
	int IRON_BASIS = 59;

	/**
	 * The meta object id for the '<em>Material</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.Material
	 * @see daubline.model.impl.ModelPackageImpl#getMaterial()
	 * @generated
	 */
	int MATERIAL = 60;

	/**
	 * The meta object id for the '<em>Stage</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.Stage
	 * @see daubline.model.impl.ModelPackageImpl#getStage()
	 * @generated
	 */
	int STAGE = 61;

	/**
	 * The meta object id for the '<em>Trial Kind</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.TrialKind
	 * @see daubline.model.impl.ModelPackageImpl#getTrialKind()
	 * @generated
	 */
	int TRIAL_KIND = 62;

	/**
	 * The meta object id for the '<em>Trial Status</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.TrialStatus
	 * @see daubline.model.impl.ModelPackageImpl#getTrialStatus()
	 * @generated
	 */
	int TRIAL_STATUS = 63;

	/**
	 * The meta object id for the '<em>Value Kind</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see daubline.base.ValueKind
	 * @see daubline.model.impl.ModelPackageImpl#getValueKind()
	 * @generated
	 */
	int VALUE_KIND = 64;


	/**
	 * Returns the meta object for class '{@link daubline.model.Identified <em>Identified</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Identified</em>'.
	 * @see daubline.model.Identified
	 * @generated
	 */
	EClass getIdentified();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Identified#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see daubline.model.Identified#getId()
	 * @see #getIdentified()
	 * @generated
	 */
	EAttribute getIdentified_Id();

	/**
	 * Returns the meta object for class '{@link daubline.model.Named <em>Named</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Named</em>'.
	 * @see daubline.model.Named
	 * @generated
	 */
	EClass getNamed();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Named#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see daubline.model.Named#getName()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Name();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Named#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see daubline.model.Named#getNote()
	 * @see #getNamed()
	 * @generated
	 */
	EAttribute getNamed_Note();

	/**
	 * Returns the meta object for class '{@link daubline.model.Study <em>Study</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Study</em>'.
	 * @see daubline.model.Study
	 * @generated
	 */
	EClass getStudy();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Study#getFormat <em>Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format</em>'.
	 * @see daubline.model.Study#getFormat()
	 * @see #getStudy()
	 * @generated
	 */
	EAttribute getStudy_Format();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Study#getQuestion <em>Question</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Question</em>'.
	 * @see daubline.model.Study#getQuestion()
	 * @see #getStudy()
	 * @generated
	 */
	EAttribute getStudy_Question();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Study#getLanguage <em>Language</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Language</em>'.
	 * @see daubline.model.Study#getLanguage()
	 * @see #getStudy()
	 * @generated
	 */
	EAttribute getStudy_Language();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Study#getLicence <em>Licence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Licence</em>'.
	 * @see daubline.model.Study#getLicence()
	 * @see #getStudy()
	 * @generated
	 */
	EAttribute getStudy_Licence();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Study#getCreatedOn <em>Created On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Created On</em>'.
	 * @see daubline.model.Study#getCreatedOn()
	 * @see #getStudy()
	 * @generated
	 */
	EAttribute getStudy_CreatedOn();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getPeople <em>People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>People</em>'.
	 * @see daubline.model.Study#getPeople()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_People();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getCitations <em>Citations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Citations</em>'.
	 * @see daubline.model.Study#getCitations()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Citations();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getVariables <em>Variables</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Variables</em>'.
	 * @see daubline.model.Study#getVariables()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Variables();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getResidueClasses <em>Residue Classes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Residue Classes</em>'.
	 * @see daubline.model.Study#getResidueClasses()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_ResidueClasses();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lots</em>'.
	 * @see daubline.model.Study#getLots()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Lots();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getReconstructions <em>Reconstructions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Reconstructions</em>'.
	 * @see daubline.model.Study#getReconstructions()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Reconstructions();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getBuilds <em>Builds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Builds</em>'.
	 * @see daubline.model.Study#getBuilds()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Builds();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see daubline.model.Study#getFiles()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Files();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getSettings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Settings</em>'.
	 * @see daubline.model.Study#getSettings()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Settings();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getMappings <em>Mappings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Mappings</em>'.
	 * @see daubline.model.Study#getMappings()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Mappings();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getHazards <em>Hazards</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Hazards</em>'.
	 * @see daubline.model.Study#getHazards()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Hazards();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getPermissions <em>Permissions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Permissions</em>'.
	 * @see daubline.model.Study#getPermissions()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Permissions();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getSites <em>Sites</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sites</em>'.
	 * @see daubline.model.Study#getSites()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Sites();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getSeries <em>Series</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Series</em>'.
	 * @see daubline.model.Study#getSeries()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_Series();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Study#getBlindRecordings <em>Blind Recordings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Blind Recordings</em>'.
	 * @see daubline.model.Study#getBlindRecordings()
	 * @see #getStudy()
	 * @generated
	 */
	EReference getStudy_BlindRecordings();

	/**
	 * Returns the meta object for class '{@link daubline.model.Person <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Person</em>'.
	 * @see daubline.model.Person
	 * @generated
	 */
	EClass getPerson();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Person#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see daubline.model.Person#getRole()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_Role();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Person#getSmeltsBefore <em>Smelts Before</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Smelts Before</em>'.
	 * @see daubline.model.Person#getSmeltsBefore()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_SmeltsBefore();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Person#isMayPublishName <em>May Publish Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>May Publish Name</em>'.
	 * @see daubline.model.Person#isMayPublishName()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_MayPublishName();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Person#isMayPublishPhotograph <em>May Publish Photograph</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>May Publish Photograph</em>'.
	 * @see daubline.model.Person#isMayPublishPhotograph()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_MayPublishPhotograph();

	/**
	 * Returns the meta object for class '{@link daubline.model.Citation <em>Citation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Citation</em>'.
	 * @see daubline.model.Citation
	 * @generated
	 */
	EClass getCitation();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getAuthors <em>Authors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Authors</em>'.
	 * @see daubline.model.Citation#getAuthors()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Authors();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getYear <em>Year</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Year</em>'.
	 * @see daubline.model.Citation#getYear()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Year();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see daubline.model.Citation#getTitle()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Title();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getContainer <em>Container</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Container</em>'.
	 * @see daubline.model.Citation#getContainer()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Container();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getVolume <em>Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Volume</em>'.
	 * @see daubline.model.Citation#getVolume()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Volume();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getPages <em>Pages</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pages</em>'.
	 * @see daubline.model.Citation#getPages()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Pages();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getPublisher <em>Publisher</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Publisher</em>'.
	 * @see daubline.model.Citation#getPublisher()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Publisher();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getDoi <em>Doi</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Doi</em>'.
	 * @see daubline.model.Citation#getDoi()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Doi();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getUrl <em>Url</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Url</em>'.
	 * @see daubline.model.Citation#getUrl()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Url();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see daubline.model.Citation#getKind()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Kind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getEditors <em>Editors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Editors</em>'.
	 * @see daubline.model.Citation#getEditors()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Editors();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getIssue <em>Issue</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Issue</em>'.
	 * @see daubline.model.Citation#getIssue()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Issue();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see daubline.model.Citation#getPlace()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Place();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Citation#getIsbn <em>Isbn</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Isbn</em>'.
	 * @see daubline.model.Citation#getIsbn()
	 * @see #getCitation()
	 * @generated
	 */
	EAttribute getCitation_Isbn();

	/**
	 * Returns the meta object for class '{@link daubline.model.VariableDefinition <em>Variable Definition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Variable Definition</em>'.
	 * @see daubline.model.VariableDefinition
	 * @generated
	 */
	EClass getVariableDefinition();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see daubline.model.VariableDefinition#getName()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Name();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getGroup <em>Group</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group</em>'.
	 * @see daubline.model.VariableDefinition#getGroup()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Group();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see daubline.model.VariableDefinition#getType()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Type();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see daubline.model.VariableDefinition#getQuantity()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see daubline.model.VariableDefinition#getUnit()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Unit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see daubline.model.VariableDefinition#getLow()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Low();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see daubline.model.VariableDefinition#getHigh()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_High();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getStages <em>Stages</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stages</em>'.
	 * @see daubline.model.VariableDefinition#getStages()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Stages();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getCategories <em>Categories</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Categories</em>'.
	 * @see daubline.model.VariableDefinition#getCategories()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Categories();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getEvidencedBy <em>Evidenced By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Evidenced By</em>'.
	 * @see daubline.model.VariableDefinition#getEvidencedBy()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_EvidencedBy();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getMeaning <em>Meaning</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Meaning</em>'.
	 * @see daubline.model.VariableDefinition#getMeaning()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Meaning();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.VariableDefinition#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see daubline.model.VariableDefinition#getSource()
	 * @see #getVariableDefinition()
	 * @generated
	 */
	EAttribute getVariableDefinition_Source();

	/**
	 * Returns the meta object for class '{@link daubline.model.ResidueClass <em>Residue Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Residue Class</em>'.
	 * @see daubline.model.ResidueClass
	 * @generated
	 */
	EClass getResidueClass();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ResidueClass#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see daubline.model.ResidueClass#getName()
	 * @see #getResidueClass()
	 * @generated
	 */
	EAttribute getResidueClass_Name();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ResidueClass#getDefinition <em>Definition</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Definition</em>'.
	 * @see daubline.model.ResidueClass#getDefinition()
	 * @see #getResidueClass()
	 * @generated
	 */
	EAttribute getResidueClass_Definition();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ResidueClass#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see daubline.model.ResidueClass#getSource()
	 * @see #getResidueClass()
	 * @generated
	 */
	EAttribute getResidueClass_Source();

	/**
	 * Returns the meta object for class '{@link daubline.model.Setting <em>Setting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Setting</em>'.
	 * @see daubline.model.Setting
	 * @generated
	 */
	EClass getSetting();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Setting#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see daubline.model.Setting#getKey()
	 * @see #getSetting()
	 * @generated
	 */
	EAttribute getSetting_Key();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Setting#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see daubline.model.Setting#getValue()
	 * @see #getSetting()
	 * @generated
	 */
	EAttribute getSetting_Value();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Setting#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see daubline.model.Setting#getUnit()
	 * @see #getSetting()
	 * @generated
	 */
	EAttribute getSetting_Unit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Setting#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see daubline.model.Setting#getSource()
	 * @see #getSetting()
	 * @generated
	 */
	EAttribute getSetting_Source();

	/**
	 * Returns the meta object for class '{@link daubline.model.ImportMapping <em>Import Mapping</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Import Mapping</em>'.
	 * @see daubline.model.ImportMapping
	 * @generated
	 */
	EClass getImportMapping();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ImportMapping#getTarget <em>Target</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Target</em>'.
	 * @see daubline.model.ImportMapping#getTarget()
	 * @see #getImportMapping()
	 * @generated
	 */
	EAttribute getImportMapping_Target();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.ImportMapping#getSettings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Settings</em>'.
	 * @see daubline.model.ImportMapping#getSettings()
	 * @see #getImportMapping()
	 * @generated
	 */
	EReference getImportMapping_Settings();

	/**
	 * Returns the meta object for class '{@link daubline.model.Hazard <em>Hazard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hazard</em>'.
	 * @see daubline.model.Hazard
	 * @generated
	 */
	EClass getHazard();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Hazard#getWho <em>Who</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Who</em>'.
	 * @see daubline.model.Hazard#getWho()
	 * @see #getHazard()
	 * @generated
	 */
	EAttribute getHazard_Who();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Hazard#getControl <em>Control</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Control</em>'.
	 * @see daubline.model.Hazard#getControl()
	 * @see #getHazard()
	 * @generated
	 */
	EAttribute getHazard_Control();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Hazard#getOwner <em>Owner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Owner</em>'.
	 * @see daubline.model.Hazard#getOwner()
	 * @see #getHazard()
	 * @generated
	 */
	EAttribute getHazard_Owner();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Hazard#getReviewOn <em>Review On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Review On</em>'.
	 * @see daubline.model.Hazard#getReviewOn()
	 * @see #getHazard()
	 * @generated
	 */
	EAttribute getHazard_ReviewOn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Hazard#getNotApplicableBecause <em>Not Applicable Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Not Applicable Because</em>'.
	 * @see daubline.model.Hazard#getNotApplicableBecause()
	 * @see #getHazard()
	 * @generated
	 */
	EAttribute getHazard_NotApplicableBecause();

	/**
	 * Returns the meta object for class '{@link daubline.model.Permission <em>Permission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Permission</em>'.
	 * @see daubline.model.Permission
	 * @generated
	 */
	EClass getPermission();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Permission#getReference <em>Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reference</em>'.
	 * @see daubline.model.Permission#getReference()
	 * @see #getPermission()
	 * @generated
	 */
	EAttribute getPermission_Reference();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Permission#getIssuer <em>Issuer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Issuer</em>'.
	 * @see daubline.model.Permission#getIssuer()
	 * @see #getPermission()
	 * @generated
	 */
	EAttribute getPermission_Issuer();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Permission#getValidFrom <em>Valid From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Valid From</em>'.
	 * @see daubline.model.Permission#getValidFrom()
	 * @see #getPermission()
	 * @generated
	 */
	EAttribute getPermission_ValidFrom();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Permission#getValidUntil <em>Valid Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Valid Until</em>'.
	 * @see daubline.model.Permission#getValidUntil()
	 * @see #getPermission()
	 * @generated
	 */
	EAttribute getPermission_ValidUntil();

	/**
	 * Returns the meta object for class '{@link daubline.model.Reading <em>Reading</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reading</em>'.
	 * @see daubline.model.Reading
	 * @generated
	 */
	EClass getReading();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getVariable <em>Variable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Variable</em>'.
	 * @see daubline.model.Reading#getVariable()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Variable();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see daubline.model.Reading#getKind()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Kind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getTyped <em>Typed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Typed</em>'.
	 * @see daubline.model.Reading#getTyped()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Typed();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see daubline.model.Reading#getUnit()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Unit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see daubline.model.Reading#getValue()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Value();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see daubline.model.Reading#getLow()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Low();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see daubline.model.Reading#getHigh()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_High();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getSigma <em>Sigma</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sigma</em>'.
	 * @see daubline.model.Reading#getSigma()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Sigma();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getCategory <em>Category</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Category</em>'.
	 * @see daubline.model.Reading#getCategory()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Category();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getHow <em>How</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>How</em>'.
	 * @see daubline.model.Reading#getHow()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_How();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Reading#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>By</em>'.
	 * @see daubline.model.Reading#getBy()
	 * @see #getReading()
	 * @generated
	 */
	EReference getReading_By();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see daubline.model.Reading#getAt()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_At();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Reading#getCitation <em>Citation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Citation</em>'.
	 * @see daubline.model.Reading#getCitation()
	 * @see #getReading()
	 * @generated
	 */
	EReference getReading_Citation();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getPage <em>Page</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Page</em>'.
	 * @see daubline.model.Reading#getPage()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Page();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getVerbatim <em>Verbatim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Verbatim</em>'.
	 * @see daubline.model.Reading#getVerbatim()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Verbatim();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getConfidence <em>Confidence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confidence</em>'.
	 * @see daubline.model.Reading#getConfidence()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Confidence();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getSamplingFraction <em>Sampling Fraction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sampling Fraction</em>'.
	 * @see daubline.model.Reading#getSamplingFraction()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_SamplingFraction();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#isPicked <em>Picked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Picked</em>'.
	 * @see daubline.model.Reading#isPicked()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Picked();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getPickedBecause <em>Picked Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Picked Because</em>'.
	 * @see daubline.model.Reading#getPickedBecause()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_PickedBecause();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reading#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see daubline.model.Reading#getNote()
	 * @see #getReading()
	 * @generated
	 */
	EAttribute getReading_Note();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Reading#getEarlier <em>Earlier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Earlier</em>'.
	 * @see daubline.model.Reading#getEarlier()
	 * @see #getReading()
	 * @generated
	 */
	EReference getReading_Earlier();

	/**
	 * Returns the meta object for class '{@link daubline.model.Earlier <em>Earlier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Earlier</em>'.
	 * @see daubline.model.Earlier
	 * @generated
	 */
	EClass getEarlier();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Earlier#getTyped <em>Typed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Typed</em>'.
	 * @see daubline.model.Earlier#getTyped()
	 * @see #getEarlier()
	 * @generated
	 */
	EAttribute getEarlier_Typed();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Earlier#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see daubline.model.Earlier#getUnit()
	 * @see #getEarlier()
	 * @generated
	 */
	EAttribute getEarlier_Unit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Earlier#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see daubline.model.Earlier#getKind()
	 * @see #getEarlier()
	 * @generated
	 */
	EAttribute getEarlier_Kind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Earlier#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see daubline.model.Earlier#getValue()
	 * @see #getEarlier()
	 * @generated
	 */
	EAttribute getEarlier_Value();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Earlier#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>By</em>'.
	 * @see daubline.model.Earlier#getBy()
	 * @see #getEarlier()
	 * @generated
	 */
	EReference getEarlier_By();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Earlier#getUntil <em>Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Until</em>'.
	 * @see daubline.model.Earlier#getUntil()
	 * @see #getEarlier()
	 * @generated
	 */
	EAttribute getEarlier_Until();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Earlier#getChange <em>Change</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Change</em>'.
	 * @see daubline.model.Earlier#getChange()
	 * @see #getEarlier()
	 * @generated
	 */
	EAttribute getEarlier_Change();

	/**
	 * Returns the meta object for class '{@link daubline.model.Claim <em>Claim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Claim</em>'.
	 * @see daubline.model.Claim
	 * @generated
	 */
	EClass getClaim();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Claim#getPreservationLimit <em>Preservation Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Preservation Limit</em>'.
	 * @see daubline.model.Claim#getPreservationLimit()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_PreservationLimit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Claim#getLimitBecause <em>Limit Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limit Because</em>'.
	 * @see daubline.model.Claim#getLimitBecause()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_LimitBecause();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Claim#getMeasurement <em>Measurement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Measurement</em>'.
	 * @see daubline.model.Claim#getMeasurement()
	 * @see #getClaim()
	 * @generated
	 */
	EReference getClaim_Measurement();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Claim#getFormula <em>Formula</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Formula</em>'.
	 * @see daubline.model.Claim#getFormula()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Formula();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Claim#getInputs <em>Inputs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inputs</em>'.
	 * @see daubline.model.Claim#getInputs()
	 * @see #getClaim()
	 * @generated
	 */
	EReference getClaim_Inputs();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Claim#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.Claim#getBlindly()
	 * @see #getClaim()
	 * @generated
	 */
	EReference getClaim_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.ClaimInput <em>Claim Input</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Claim Input</em>'.
	 * @see daubline.model.ClaimInput
	 * @generated
	 */
	EClass getClaimInput();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ClaimInput#getSymbol <em>Symbol</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Symbol</em>'.
	 * @see daubline.model.ClaimInput#getSymbol()
	 * @see #getClaimInput()
	 * @generated
	 */
	EAttribute getClaimInput_Symbol();

	/**
	 * Returns the meta object for class '{@link daubline.model.StagedValue <em>Staged Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Staged Value</em>'.
	 * @see daubline.model.StagedValue
	 * @generated
	 */
	EClass getStagedValue();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.StagedValue#getStage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stage</em>'.
	 * @see daubline.model.StagedValue#getStage()
	 * @see #getStagedValue()
	 * @generated
	 */
	EAttribute getStagedValue_Stage();

	/**
	 * Returns the meta object for class '{@link daubline.model.Choice <em>Choice</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Choice</em>'.
	 * @see daubline.model.Choice
	 * @generated
	 */
	EClass getChoice();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Choice#getBasis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Basis</em>'.
	 * @see daubline.model.Choice#getBasis()
	 * @see #getChoice()
	 * @generated
	 */
	EAttribute getChoice_Basis();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Choice#getBecause <em>Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Because</em>'.
	 * @see daubline.model.Choice#getBecause()
	 * @see #getChoice()
	 * @generated
	 */
	EAttribute getChoice_Because();

	/**
	 * Returns the meta object for class '{@link daubline.model.Prediction <em>Prediction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Prediction</em>'.
	 * @see daubline.model.Prediction
	 * @generated
	 */
	EClass getPrediction();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Prediction#getStatedOn <em>Stated On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stated On</em>'.
	 * @see daubline.model.Prediction#getStatedOn()
	 * @see #getPrediction()
	 * @generated
	 */
	EAttribute getPrediction_StatedOn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Prediction#isLocked <em>Locked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Locked</em>'.
	 * @see daubline.model.Prediction#isLocked()
	 * @see #getPrediction()
	 * @generated
	 */
	EAttribute getPrediction_Locked();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Prediction#getReconstruction <em>Reconstruction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Reconstruction</em>'.
	 * @see daubline.model.Prediction#getReconstruction()
	 * @see #getPrediction()
	 * @generated
	 */
	EReference getPrediction_Reconstruction();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Prediction#getEngine <em>Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Engine</em>'.
	 * @see daubline.model.Prediction#getEngine()
	 * @see #getPrediction()
	 * @generated
	 */
	EAttribute getPrediction_Engine();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Prediction#getRevises <em>Revises</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Revises</em>'.
	 * @see daubline.model.Prediction#getRevises()
	 * @see #getPrediction()
	 * @generated
	 */
	EReference getPrediction_Revises();

	/**
	 * Returns the meta object for class '{@link daubline.model.ResidueMass <em>Residue Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Residue Mass</em>'.
	 * @see daubline.model.ResidueMass
	 * @generated
	 */
	EClass getResidueMass();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.ResidueMass#getResidueClass <em>Residue Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Residue Class</em>'.
	 * @see daubline.model.ResidueMass#getResidueClass()
	 * @see #getResidueMass()
	 * @generated
	 */
	EReference getResidueMass_ResidueClass();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ResidueMass#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see daubline.model.ResidueMass#getCount()
	 * @see #getResidueMass()
	 * @generated
	 */
	EAttribute getResidueMass_Count();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.ResidueMass#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.ResidueMass#getBlindly()
	 * @see #getResidueMass()
	 * @generated
	 */
	EReference getResidueMass_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.Component <em>Component</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Component</em>'.
	 * @see daubline.model.Component
	 * @generated
	 */
	EClass getComponent();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Component#getSymbol <em>Symbol</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Symbol</em>'.
	 * @see daubline.model.Component#getSymbol()
	 * @see #getComponent()
	 * @generated
	 */
	EAttribute getComponent_Symbol();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Component#getPrintedAs <em>Printed As</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Printed As</em>'.
	 * @see daubline.model.Component#getPrintedAs()
	 * @see #getComponent()
	 * @generated
	 */
	EAttribute getComponent_PrintedAs();

	/**
	 * Returns the meta object for class '{@link daubline.model.Analysis <em>Analysis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Analysis</em>'.
	 * @see daubline.model.Analysis
	 * @generated
	 */
	EClass getAnalysis();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Analysis#getSample <em>Sample</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Sample</em>'.
	 * @see daubline.model.Analysis#getSample()
	 * @see #getAnalysis()
	 * @generated
	 */
	EReference getAnalysis_Sample();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see daubline.model.Analysis#getMaterial()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Material();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getSpecimen <em>Specimen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Specimen</em>'.
	 * @see daubline.model.Analysis#getSpecimen()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Specimen();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getMethod <em>Method</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Method</em>'.
	 * @see daubline.model.Analysis#getMethod()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Method();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getInstrument <em>Instrument</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Instrument</em>'.
	 * @see daubline.model.Analysis#getInstrument()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Instrument();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getStandards <em>Standards</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Standards</em>'.
	 * @see daubline.model.Analysis#getStandards()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Standards();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getConditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conditions</em>'.
	 * @see daubline.model.Analysis#getConditions()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Conditions();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getAccuracy <em>Accuracy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Accuracy</em>'.
	 * @see daubline.model.Analysis#getAccuracy()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Accuracy();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getLaboratory <em>Laboratory</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Laboratory</em>'.
	 * @see daubline.model.Analysis#getLaboratory()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Laboratory();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getOn <em>On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On</em>'.
	 * @see daubline.model.Analysis#getOn()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_On();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getAreas <em>Areas</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Areas</em>'.
	 * @see daubline.model.Analysis#getAreas()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Areas();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getIronBasis <em>Iron Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Iron Basis</em>'.
	 * @see daubline.model.Analysis#getIronBasis()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_IronBasis();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getReplicate <em>Replicate</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Replicate</em>'.
	 * @see daubline.model.Analysis#getReplicate()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Replicate();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getTotalTyped <em>Total Typed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Total Typed</em>'.
	 * @see daubline.model.Analysis#getTotalTyped()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_TotalTyped();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getTotal <em>Total</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Total</em>'.
	 * @see daubline.model.Analysis#getTotal()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Total();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Analysis#getCitation <em>Citation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Citation</em>'.
	 * @see daubline.model.Analysis#getCitation()
	 * @see #getAnalysis()
	 * @generated
	 */
	EReference getAnalysis_Citation();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Analysis#getPage <em>Page</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Page</em>'.
	 * @see daubline.model.Analysis#getPage()
	 * @see #getAnalysis()
	 * @generated
	 */
	EAttribute getAnalysis_Page();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Analysis#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>File</em>'.
	 * @see daubline.model.Analysis#getFile()
	 * @see #getAnalysis()
	 * @generated
	 */
	EReference getAnalysis_File();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Analysis#getComponents <em>Components</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Components</em>'.
	 * @see daubline.model.Analysis#getComponents()
	 * @see #getAnalysis()
	 * @generated
	 */
	EReference getAnalysis_Components();

	/**
	 * Returns the meta object for class '{@link daubline.model.Sheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sheet</em>'.
	 * @see daubline.model.Sheet
	 * @generated
	 */
	EClass getSheet();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Sheet#getRecordedBy <em>Recorded By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Recorded By</em>'.
	 * @see daubline.model.Sheet#getRecordedBy()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_RecordedBy();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sheet#getRecordedOn <em>Recorded On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Recorded On</em>'.
	 * @see daubline.model.Sheet#getRecordedOn()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_RecordedOn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sheet#isBlind <em>Blind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blind</em>'.
	 * @see daubline.model.Sheet#isBlind()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_Blind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sheet#getSamplingFraction <em>Sampling Fraction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sampling Fraction</em>'.
	 * @see daubline.model.Sheet#getSamplingFraction()
	 * @see #getSheet()
	 * @generated
	 */
	EAttribute getSheet_SamplingFraction();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Sheet#getClaims <em>Claims</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Claims</em>'.
	 * @see daubline.model.Sheet#getClaims()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Claims();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Sheet#getResidues <em>Residues</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Residues</em>'.
	 * @see daubline.model.Sheet#getResidues()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Residues();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Sheet#getAnalyses <em>Analyses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Analyses</em>'.
	 * @see daubline.model.Sheet#getAnalyses()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Analyses();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Sheet#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see daubline.model.Sheet#getFiles()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Files();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Sheet#getZones <em>Zones</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Zones</em>'.
	 * @see daubline.model.Sheet#getZones()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Zones();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Sheet#getSpread <em>Spread</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Spread</em>'.
	 * @see daubline.model.Sheet#getSpread()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Spread();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Sheet#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.Sheet#getBlindly()
	 * @see #getSheet()
	 * @generated
	 */
	EReference getSheet_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.EvidenceSheet <em>Evidence Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Evidence Sheet</em>'.
	 * @see daubline.model.EvidenceSheet
	 * @generated
	 */
	EClass getEvidenceSheet();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.EvidenceSheet#getFeature <em>Feature</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Feature</em>'.
	 * @see daubline.model.EvidenceSheet#getFeature()
	 * @see #getEvidenceSheet()
	 * @generated
	 */
	EAttribute getEvidenceSheet_Feature();

	/**
	 * Returns the meta object for class '{@link daubline.model.RemainsSheet <em>Remains Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Remains Sheet</em>'.
	 * @see daubline.model.RemainsSheet
	 * @generated
	 */
	EClass getRemainsSheet();

	/**
	 * Returns the meta object for class '{@link daubline.model.BlindRecording <em>Blind Recording</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Blind Recording</em>'.
	 * @see daubline.model.BlindRecording
	 * @generated
	 */
	EClass getBlindRecording();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.BlindRecording#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>By</em>'.
	 * @see daubline.model.BlindRecording#getBy()
	 * @see #getBlindRecording()
	 * @generated
	 */
	EReference getBlindRecording_By();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.BlindRecording#getBegun <em>Begun</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Begun</em>'.
	 * @see daubline.model.BlindRecording#getBegun()
	 * @see #getBlindRecording()
	 * @generated
	 */
	EAttribute getBlindRecording_Begun();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.BlindRecording#getEnded <em>Ended</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ended</em>'.
	 * @see daubline.model.BlindRecording#getEnded()
	 * @see #getBlindRecording()
	 * @generated
	 */
	EAttribute getBlindRecording_Ended();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.BlindRecording#getEndedBy <em>Ended By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Ended By</em>'.
	 * @see daubline.model.BlindRecording#getEndedBy()
	 * @see #getBlindRecording()
	 * @generated
	 */
	EReference getBlindRecording_EndedBy();

	/**
	 * Returns the meta object for class '{@link daubline.model.WallZone <em>Wall Zone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wall Zone</em>'.
	 * @see daubline.model.WallZone
	 * @generated
	 */
	EClass getWallZone();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.WallZone#getClock <em>Clock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clock</em>'.
	 * @see daubline.model.WallZone#getClock()
	 * @see #getWallZone()
	 * @generated
	 */
	EAttribute getWallZone_Clock();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.WallZone#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see daubline.model.WallZone#getLow()
	 * @see #getWallZone()
	 * @generated
	 */
	EAttribute getWallZone_Low();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.WallZone#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see daubline.model.WallZone#getHigh()
	 * @see #getWallZone()
	 * @generated
	 */
	EAttribute getWallZone_High();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.WallZone#getState <em>State</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>State</em>'.
	 * @see daubline.model.WallZone#getState()
	 * @see #getWallZone()
	 * @generated
	 */
	EAttribute getWallZone_State();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.WallZone#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see daubline.model.WallZone#getNote()
	 * @see #getWallZone()
	 * @generated
	 */
	EAttribute getWallZone_Note();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.WallZone#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.WallZone#getBlindly()
	 * @see #getWallZone()
	 * @generated
	 */
	EReference getWallZone_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.SpreadSquare <em>Spread Square</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Spread Square</em>'.
	 * @see daubline.model.SpreadSquare
	 * @generated
	 */
	EClass getSpreadSquare();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.SpreadSquare#getEast <em>East</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>East</em>'.
	 * @see daubline.model.SpreadSquare#getEast()
	 * @see #getSpreadSquare()
	 * @generated
	 */
	EAttribute getSpreadSquare_East();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.SpreadSquare#getNorth <em>North</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>North</em>'.
	 * @see daubline.model.SpreadSquare#getNorth()
	 * @see #getSpreadSquare()
	 * @generated
	 */
	EAttribute getSpreadSquare_North();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.SpreadSquare#getSide <em>Side</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Side</em>'.
	 * @see daubline.model.SpreadSquare#getSide()
	 * @see #getSpreadSquare()
	 * @generated
	 */
	EAttribute getSpreadSquare_Side();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.SpreadSquare#getResidueClass <em>Residue Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Residue Class</em>'.
	 * @see daubline.model.SpreadSquare#getResidueClass()
	 * @see #getSpreadSquare()
	 * @generated
	 */
	EReference getSpreadSquare_ResidueClass();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.SpreadSquare#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.SpreadSquare#getBlindly()
	 * @see #getSpreadSquare()
	 * @generated
	 */
	EReference getSpreadSquare_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.Site <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Site</em>'.
	 * @see daubline.model.Site
	 * @generated
	 */
	EClass getSite();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Site#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see daubline.model.Site#getPlace()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Place();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Site#getRegion <em>Region</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Region</em>'.
	 * @see daubline.model.Site#getRegion()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Region();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Site#getCountry <em>Country</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Country</em>'.
	 * @see daubline.model.Site#getCountry()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Country();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Site#getLatitude <em>Latitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Latitude</em>'.
	 * @see daubline.model.Site#getLatitude()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Latitude();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Site#getLongitude <em>Longitude</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Longitude</em>'.
	 * @see daubline.model.Site#getLongitude()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Longitude();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Site#isSensitive <em>Sensitive</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sensitive</em>'.
	 * @see daubline.model.Site#isSensitive()
	 * @see #getSite()
	 * @generated
	 */
	EAttribute getSite_Sensitive();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Site#getContexts <em>Contexts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Contexts</em>'.
	 * @see daubline.model.Site#getContexts()
	 * @see #getSite()
	 * @generated
	 */
	EReference getSite_Contexts();

	/**
	 * Returns the meta object for class '{@link daubline.model.Context <em>Context</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Context</em>'.
	 * @see daubline.model.Context
	 * @generated
	 */
	EClass getContext();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Context#getPeriod <em>Period</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Period</em>'.
	 * @see daubline.model.Context#getPeriod()
	 * @see #getContext()
	 * @generated
	 */
	EAttribute getContext_Period();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Context#getPhase <em>Phase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Phase</em>'.
	 * @see daubline.model.Context#getPhase()
	 * @see #getContext()
	 * @generated
	 */
	EAttribute getContext_Phase();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Context#getDeposit <em>Deposit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Deposit</em>'.
	 * @see daubline.model.Context#getDeposit()
	 * @see #getContext()
	 * @generated
	 */
	EAttribute getContext_Deposit();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Context#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sheets</em>'.
	 * @see daubline.model.Context#getSheets()
	 * @see #getContext()
	 * @generated
	 */
	EReference getContext_Sheets();

	/**
	 * Returns the meta object for class '{@link daubline.model.Reconstruction <em>Reconstruction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Reconstruction</em>'.
	 * @see daubline.model.Reconstruction
	 * @generated
	 */
	EClass getReconstruction();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reconstruction#getHypothesis <em>Hypothesis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hypothesis</em>'.
	 * @see daubline.model.Reconstruction#getHypothesis()
	 * @see #getReconstruction()
	 * @generated
	 */
	EAttribute getReconstruction_Hypothesis();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Reconstruction#getVariantOf <em>Variant Of</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Variant Of</em>'.
	 * @see daubline.model.Reconstruction#getVariantOf()
	 * @see #getReconstruction()
	 * @generated
	 */
	EReference getReconstruction_VariantOf();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.Reconstruction#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Sheets</em>'.
	 * @see daubline.model.Reconstruction#getSheets()
	 * @see #getReconstruction()
	 * @generated
	 */
	EReference getReconstruction_Sheets();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reconstruction#isRetired <em>Retired</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Retired</em>'.
	 * @see daubline.model.Reconstruction#isRetired()
	 * @see #getReconstruction()
	 * @generated
	 */
	EAttribute getReconstruction_Retired();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Reconstruction#getRetiredBecause <em>Retired Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Retired Because</em>'.
	 * @see daubline.model.Reconstruction#getRetiredBecause()
	 * @see #getReconstruction()
	 * @generated
	 */
	EAttribute getReconstruction_RetiredBecause();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Reconstruction#getChoices <em>Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Choices</em>'.
	 * @see daubline.model.Reconstruction#getChoices()
	 * @see #getReconstruction()
	 * @generated
	 */
	EReference getReconstruction_Choices();

	/**
	 * Returns the meta object for class '{@link daubline.model.Lot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lot</em>'.
	 * @see daubline.model.Lot
	 * @generated
	 */
	EClass getLot();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Lot#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see daubline.model.Lot#getMaterial()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Material();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Lot#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Supplier</em>'.
	 * @see daubline.model.Lot#getSupplier()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Supplier();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Lot#getOrigin <em>Origin</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Origin</em>'.
	 * @see daubline.model.Lot#getOrigin()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_Origin();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Lot#getDeliveredOn <em>Delivered On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Delivered On</em>'.
	 * @see daubline.model.Lot#getDeliveredOn()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_DeliveredOn();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.Lot#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>From</em>'.
	 * @see daubline.model.Lot#getFrom()
	 * @see #getLot()
	 * @generated
	 */
	EReference getLot_From();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Lot#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see daubline.model.Lot#getValues()
	 * @see #getLot()
	 * @generated
	 */
	EReference getLot_Values();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Lot#getTreatments <em>Treatments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Treatments</em>'.
	 * @see daubline.model.Lot#getTreatments()
	 * @see #getLot()
	 * @generated
	 */
	EReference getLot_Treatments();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Lot#getAnalyses <em>Analyses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Analyses</em>'.
	 * @see daubline.model.Lot#getAnalyses()
	 * @see #getLot()
	 * @generated
	 */
	EReference getLot_Analyses();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Lot#getMoistureBasis <em>Moisture Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Moisture Basis</em>'.
	 * @see daubline.model.Lot#getMoistureBasis()
	 * @see #getLot()
	 * @generated
	 */
	EAttribute getLot_MoistureBasis();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Lot#getRecipe <em>Recipe</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Recipe</em>'.
	 * @see daubline.model.Lot#getRecipe()
	 * @see #getLot()
	 * @generated
	 */
	EReference getLot_Recipe();

	/**
	 * Returns the meta object for class '{@link daubline.model.Treatment <em>Treatment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Treatment</em>'.
	 * @see daubline.model.Treatment
	 * @generated
	 */
	EClass getTreatment();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Treatment#getStep <em>Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Step</em>'.
	 * @see daubline.model.Treatment#getStep()
	 * @see #getTreatment()
	 * @generated
	 */
	EAttribute getTreatment_Step();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Treatment#getOn <em>On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On</em>'.
	 * @see daubline.model.Treatment#getOn()
	 * @see #getTreatment()
	 * @generated
	 */
	EAttribute getTreatment_On();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Treatment#getMassIn <em>Mass In</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass In</em>'.
	 * @see daubline.model.Treatment#getMassIn()
	 * @see #getTreatment()
	 * @generated
	 */
	EAttribute getTreatment_MassIn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Treatment#getMassOut <em>Mass Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mass Out</em>'.
	 * @see daubline.model.Treatment#getMassOut()
	 * @see #getTreatment()
	 * @generated
	 */
	EAttribute getTreatment_MassOut();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Treatment#getLost <em>Lost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lost</em>'.
	 * @see daubline.model.Treatment#getLost()
	 * @see #getTreatment()
	 * @generated
	 */
	EAttribute getTreatment_Lost();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Treatment#getSigma <em>Sigma</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sigma</em>'.
	 * @see daubline.model.Treatment#getSigma()
	 * @see #getTreatment()
	 * @generated
	 */
	EAttribute getTreatment_Sigma();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Treatment#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see daubline.model.Treatment#getValues()
	 * @see #getTreatment()
	 * @generated
	 */
	EReference getTreatment_Values();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Treatment#getBands <em>Bands</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bands</em>'.
	 * @see daubline.model.Treatment#getBands()
	 * @see #getTreatment()
	 * @generated
	 */
	EReference getTreatment_Bands();

	/**
	 * Returns the meta object for class '{@link daubline.model.SizeBand <em>Size Band</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Size Band</em>'.
	 * @see daubline.model.SizeBand
	 * @generated
	 */
	EClass getSizeBand();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.SizeBand#getMeshFrom <em>Mesh From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mesh From</em>'.
	 * @see daubline.model.SizeBand#getMeshFrom()
	 * @see #getSizeBand()
	 * @generated
	 */
	EAttribute getSizeBand_MeshFrom();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.SizeBand#getMeshTo <em>Mesh To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Mesh To</em>'.
	 * @see daubline.model.SizeBand#getMeshTo()
	 * @see #getSizeBand()
	 * @generated
	 */
	EAttribute getSizeBand_MeshTo();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.SizeBand#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lot</em>'.
	 * @see daubline.model.SizeBand#getLot()
	 * @see #getSizeBand()
	 * @generated
	 */
	EReference getSizeBand_Lot();

	/**
	 * Returns the meta object for class '{@link daubline.model.MixPart <em>Mix Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Mix Part</em>'.
	 * @see daubline.model.MixPart
	 * @generated
	 */
	EClass getMixPart();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.MixPart#getPart <em>Part</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Part</em>'.
	 * @see daubline.model.MixPart#getPart()
	 * @see #getMixPart()
	 * @generated
	 */
	EAttribute getMixPart_Part();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.MixPart#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lot</em>'.
	 * @see daubline.model.MixPart#getLot()
	 * @see #getMixPart()
	 * @generated
	 */
	EReference getMixPart_Lot();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.MixPart#isByVolume <em>By Volume</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By Volume</em>'.
	 * @see daubline.model.MixPart#isByVolume()
	 * @see #getMixPart()
	 * @generated
	 */
	EAttribute getMixPart_ByVolume();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.MixPart#getBulkDensity <em>Bulk Density</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bulk Density</em>'.
	 * @see daubline.model.MixPart#getBulkDensity()
	 * @see #getMixPart()
	 * @generated
	 */
	EAttribute getMixPart_BulkDensity();

	/**
	 * Returns the meta object for class '{@link daubline.model.FurnaceBuild <em>Furnace Build</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Furnace Build</em>'.
	 * @see daubline.model.FurnaceBuild
	 * @generated
	 */
	EClass getFurnaceBuild();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.FurnaceBuild#getReconstruction <em>Reconstruction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Reconstruction</em>'.
	 * @see daubline.model.FurnaceBuild#getReconstruction()
	 * @see #getFurnaceBuild()
	 * @generated
	 */
	EReference getFurnaceBuild_Reconstruction();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FurnaceBuild#getBuiltOn <em>Built On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Built On</em>'.
	 * @see daubline.model.FurnaceBuild#getBuiltOn()
	 * @see #getFurnaceBuild()
	 * @generated
	 */
	EAttribute getFurnaceBuild_BuiltOn();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.FurnaceBuild#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Lots</em>'.
	 * @see daubline.model.FurnaceBuild#getLots()
	 * @see #getFurnaceBuild()
	 * @generated
	 */
	EReference getFurnaceBuild_Lots();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.FurnaceBuild#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see daubline.model.FurnaceBuild#getValues()
	 * @see #getFurnaceBuild()
	 * @generated
	 */
	EReference getFurnaceBuild_Values();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.FurnaceBuild#getLog <em>Log</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Log</em>'.
	 * @see daubline.model.FurnaceBuild#getLog()
	 * @see #getFurnaceBuild()
	 * @generated
	 */
	EReference getFurnaceBuild_Log();

	/**
	 * Returns the meta object for class '{@link daubline.model.Series <em>Series</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Series</em>'.
	 * @see daubline.model.Series
	 * @generated
	 */
	EClass getSeries();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getQuestion <em>Question</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Question</em>'.
	 * @see daubline.model.Series#getQuestion()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_Question();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getPlan <em>Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Plan</em>'.
	 * @see daubline.model.Series#getPlan()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_Plan();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getBudget <em>Budget</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Budget</em>'.
	 * @see daubline.model.Series#getBudget()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_Budget();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#isFrozen <em>Frozen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frozen</em>'.
	 * @see daubline.model.Series#isFrozen()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_Frozen();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getSeed <em>Seed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seed</em>'.
	 * @see daubline.model.Series#getSeed()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_Seed();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getStopCriteria <em>Stop Criteria</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stop Criteria</em>'.
	 * @see daubline.model.Series#getStopCriteria()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_StopCriteria();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Series#getFactors <em>Factors</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Factors</em>'.
	 * @see daubline.model.Series#getFactors()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Factors();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Series#getRoles <em>Roles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Roles</em>'.
	 * @see daubline.model.Series#getRoles()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Roles();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Series#getTrials <em>Trials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Trials</em>'.
	 * @see daubline.model.Series#getTrials()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Trials();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getAim <em>Aim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Aim</em>'.
	 * @see daubline.model.Series#getAim()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_Aim();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Series#getForbidden <em>Forbidden</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Forbidden</em>'.
	 * @see daubline.model.Series#getForbidden()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Forbidden();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Series#getProvisions <em>Provisions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Provisions</em>'.
	 * @see daubline.model.Series#getProvisions()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Provisions();

	/**
	 * Returns the meta object for the containment reference '{@link daubline.model.Series#getLabour <em>Labour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Labour</em>'.
	 * @see daubline.model.Series#getLabour()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Labour();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Series#getPlans <em>Plans</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Plans</em>'.
	 * @see daubline.model.Series#getPlans()
	 * @see #getSeries()
	 * @generated
	 */
	EReference getSeries_Plans();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getMostTrials <em>Most Trials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Most Trials</em>'.
	 * @see daubline.model.Series#getMostTrials()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_MostTrials();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getCentreTrials <em>Centre Trials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Centre Trials</em>'.
	 * @see daubline.model.Series#getCentreTrials()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_CentreTrials();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getRepeatTrials <em>Repeat Trials</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Repeat Trials</em>'.
	 * @see daubline.model.Series#getRepeatTrials()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_RepeatTrials();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getBurnsPerDay <em>Burns Per Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Burns Per Day</em>'.
	 * @see daubline.model.Series#getBurnsPerDay()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_BurnsPerDay();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getFurnaceRatio <em>Furnace Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Furnace Ratio</em>'.
	 * @see daubline.model.Series#getFurnaceRatio()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_FurnaceRatio();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Series#getDayRatio <em>Day Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Day Ratio</em>'.
	 * @see daubline.model.Series#getDayRatio()
	 * @see #getSeries()
	 * @generated
	 */
	EAttribute getSeries_DayRatio();

	/**
	 * Returns the meta object for class '{@link daubline.model.Factor <em>Factor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Factor</em>'.
	 * @see daubline.model.Factor
	 * @generated
	 */
	EClass getFactor();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Factor#getVariable <em>Variable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Variable</em>'.
	 * @see daubline.model.Factor#getVariable()
	 * @see #getFactor()
	 * @generated
	 */
	EAttribute getFactor_Variable();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Factor#getLevels <em>Levels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Levels</em>'.
	 * @see daubline.model.Factor#getLevels()
	 * @see #getFactor()
	 * @generated
	 */
	EAttribute getFactor_Levels();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Factor#isHardToChange <em>Hard To Change</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hard To Change</em>'.
	 * @see daubline.model.Factor#isHardToChange()
	 * @see #getFactor()
	 * @generated
	 */
	EAttribute getFactor_HardToChange();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Factor#isDaily <em>Daily</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Daily</em>'.
	 * @see daubline.model.Factor#isDaily()
	 * @see #getFactor()
	 * @generated
	 */
	EAttribute getFactor_Daily();

	/**
	 * Returns the meta object for class '{@link daubline.model.ForbiddenCombination <em>Forbidden Combination</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Forbidden Combination</em>'.
	 * @see daubline.model.ForbiddenCombination
	 * @generated
	 */
	EClass getForbiddenCombination();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ForbiddenCombination#getConditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conditions</em>'.
	 * @see daubline.model.ForbiddenCombination#getConditions()
	 * @see #getForbiddenCombination()
	 * @generated
	 */
	EAttribute getForbiddenCombination_Conditions();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ForbiddenCombination#getBecause <em>Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Because</em>'.
	 * @see daubline.model.ForbiddenCombination#getBecause()
	 * @see #getForbiddenCombination()
	 * @generated
	 */
	EAttribute getForbiddenCombination_Because();

	/**
	 * Returns the meta object for class '{@link daubline.model.Provision <em>Provision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Provision</em>'.
	 * @see daubline.model.Provision
	 * @generated
	 */
	EClass getProvision();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see daubline.model.Provision#getUnit()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_Unit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getAvailable <em>Available</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Available</em>'.
	 * @see daubline.model.Provision#getAvailable()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_Available();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getMoisture <em>Moisture</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Moisture</em>'.
	 * @see daubline.model.Provision#getMoisture()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_Moisture();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#isDryBasis <em>Dry Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dry Basis</em>'.
	 * @see daubline.model.Provision#isDryBasis()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_DryBasis();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getLosses <em>Losses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Losses</em>'.
	 * @see daubline.model.Provision#getLosses()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_Losses();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getReserve <em>Reserve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reserve</em>'.
	 * @see daubline.model.Provision#getReserve()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_Reserve();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getOnce <em>Once</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Once</em>'.
	 * @see daubline.model.Provision#getOnce()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_Once();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getPerTrial <em>Per Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Per Trial</em>'.
	 * @see daubline.model.Provision#getPerTrial()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_PerTrial();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getPerFurnace <em>Per Furnace</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Per Furnace</em>'.
	 * @see daubline.model.Provision#getPerFurnace()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_PerFurnace();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Provision#getPerRefit <em>Per Refit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Per Refit</em>'.
	 * @see daubline.model.Provision#getPerRefit()
	 * @see #getProvision()
	 * @generated
	 */
	EAttribute getProvision_PerRefit();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.Provision#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Lots</em>'.
	 * @see daubline.model.Provision#getLots()
	 * @see #getProvision()
	 * @generated
	 */
	EReference getProvision_Lots();

	/**
	 * Returns the meta object for class '{@link daubline.model.Labour <em>Labour</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Labour</em>'.
	 * @see daubline.model.Labour
	 * @generated
	 */
	EClass getLabour();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getTeam <em>Team</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Team</em>'.
	 * @see daubline.model.Labour#getTeam()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_Team();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getFirstDay <em>First Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>First Day</em>'.
	 * @see daubline.model.Labour#getFirstDay()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_FirstDay();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getLastDay <em>Last Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Last Day</em>'.
	 * @see daubline.model.Labour#getLastDay()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_LastDay();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getWeekdays <em>Weekdays</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weekdays</em>'.
	 * @see daubline.model.Labour#getWeekdays()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_Weekdays();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getDaysOff <em>Days Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Days Off</em>'.
	 * @see daubline.model.Labour#getDaysOff()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_DaysOff();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getBuildDays <em>Build Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Build Days</em>'.
	 * @see daubline.model.Labour#getBuildDays()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_BuildDays();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getBuildPeople <em>Build People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Build People</em>'.
	 * @see daubline.model.Labour#getBuildPeople()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_BuildPeople();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getDryDays <em>Dry Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dry Days</em>'.
	 * @see daubline.model.Labour#getDryDays()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_DryDays();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getBurnDays <em>Burn Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Burn Days</em>'.
	 * @see daubline.model.Labour#getBurnDays()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_BurnDays();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getBurnPeople <em>Burn People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Burn People</em>'.
	 * @see daubline.model.Labour#getBurnPeople()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_BurnPeople();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getRefitDays <em>Refit Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Refit Days</em>'.
	 * @see daubline.model.Labour#getRefitDays()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_RefitDays();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getRefitPeople <em>Refit People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Refit People</em>'.
	 * @see daubline.model.Labour#getRefitPeople()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_RefitPeople();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getRefitDryDays <em>Refit Dry Days</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Refit Dry Days</em>'.
	 * @see daubline.model.Labour#getRefitDryDays()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_RefitDryDays();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getFirings <em>Firings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Firings</em>'.
	 * @see daubline.model.Labour#getFirings()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_Firings();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getFailureShare <em>Failure Share</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Failure Share</em>'.
	 * @see daubline.model.Labour#getFailureShare()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_FailureShare();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Labour#getAssurance <em>Assurance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Assurance</em>'.
	 * @see daubline.model.Labour#getAssurance()
	 * @see #getLabour()
	 * @generated
	 */
	EAttribute getLabour_Assurance();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.Labour#getPermissions <em>Permissions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Permissions</em>'.
	 * @see daubline.model.Labour#getPermissions()
	 * @see #getLabour()
	 * @generated
	 */
	EReference getLabour_Permissions();

	/**
	 * Returns the meta object for class '{@link daubline.model.FrozenPlan <em>Frozen Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Frozen Plan</em>'.
	 * @see daubline.model.FrozenPlan
	 * @generated
	 */
	EClass getFrozenPlan();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getAim <em>Aim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Aim</em>'.
	 * @see daubline.model.FrozenPlan#getAim()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Aim();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getSeed <em>Seed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Seed</em>'.
	 * @see daubline.model.FrozenPlan#getSeed()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Seed();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getAlgorithm <em>Algorithm</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Algorithm</em>'.
	 * @see daubline.model.FrozenPlan#getAlgorithm()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Algorithm();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see daubline.model.FrozenPlan#getVersion()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Version();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getFrozenAt <em>Frozen At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Frozen At</em>'.
	 * @see daubline.model.FrozenPlan#getFrozenAt()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_FrozenAt();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getEngine <em>Engine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Engine</em>'.
	 * @see daubline.model.FrozenPlan#getEngine()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Engine();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getFurnaceRatio <em>Furnace Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Furnace Ratio</em>'.
	 * @see daubline.model.FrozenPlan#getFurnaceRatio()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_FurnaceRatio();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getDayRatio <em>Day Ratio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Day Ratio</em>'.
	 * @see daubline.model.FrozenPlan#getDayRatio()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_DayRatio();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getRestriction <em>Restriction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Restriction</em>'.
	 * @see daubline.model.FrozenPlan#getRestriction()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Restriction();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.FrozenPlan#getReasons <em>Reasons</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reasons</em>'.
	 * @see daubline.model.FrozenPlan#getReasons()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EAttribute getFrozenPlan_Reasons();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.FrozenPlan#getRuns <em>Runs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Runs</em>'.
	 * @see daubline.model.FrozenPlan#getRuns()
	 * @see #getFrozenPlan()
	 * @generated
	 */
	EReference getFrozenPlan_Runs();

	/**
	 * Returns the meta object for class '{@link daubline.model.PlannedRun <em>Planned Run</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Planned Run</em>'.
	 * @see daubline.model.PlannedRun
	 * @generated
	 */
	EClass getPlannedRun();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.PlannedRun#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Place</em>'.
	 * @see daubline.model.PlannedRun#getPlace()
	 * @see #getPlannedRun()
	 * @generated
	 */
	EAttribute getPlannedRun_Place();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.PlannedRun#getFurnace <em>Furnace</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Furnace</em>'.
	 * @see daubline.model.PlannedRun#getFurnace()
	 * @see #getPlannedRun()
	 * @generated
	 */
	EAttribute getPlannedRun_Furnace();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.PlannedRun#getDay <em>Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Day</em>'.
	 * @see daubline.model.PlannedRun#getDay()
	 * @see #getPlannedRun()
	 * @generated
	 */
	EAttribute getPlannedRun_Day();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.PlannedRun#getTrial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Trial</em>'.
	 * @see daubline.model.PlannedRun#getTrial()
	 * @see #getPlannedRun()
	 * @generated
	 */
	EReference getPlannedRun_Trial();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.PlannedRun#getSettings <em>Settings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Settings</em>'.
	 * @see daubline.model.PlannedRun#getSettings()
	 * @see #getPlannedRun()
	 * @generated
	 */
	EReference getPlannedRun_Settings();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.PlannedRun#getDeviation <em>Deviation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Deviation</em>'.
	 * @see daubline.model.PlannedRun#getDeviation()
	 * @see #getPlannedRun()
	 * @generated
	 */
	EAttribute getPlannedRun_Deviation();

	/**
	 * Returns the meta object for class '{@link daubline.model.RoleAssignment <em>Role Assignment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Role Assignment</em>'.
	 * @see daubline.model.RoleAssignment
	 * @generated
	 */
	EClass getRoleAssignment();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.RoleAssignment#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see daubline.model.RoleAssignment#getRole()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EAttribute getRoleAssignment_Role();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.RoleAssignment#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Person</em>'.
	 * @see daubline.model.RoleAssignment#getPerson()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EReference getRoleAssignment_Person();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.RoleAssignment#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see daubline.model.RoleAssignment#getFrom()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EAttribute getRoleAssignment_From();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.RoleAssignment#getUntil <em>Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Until</em>'.
	 * @see daubline.model.RoleAssignment#getUntil()
	 * @see #getRoleAssignment()
	 * @generated
	 */
	EAttribute getRoleAssignment_Until();

	/**
	 * Returns the meta object for class '{@link daubline.model.Trial <em>Trial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Trial</em>'.
	 * @see daubline.model.Trial
	 * @generated
	 */
	EClass getTrial();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getNumber <em>Number</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Number</em>'.
	 * @see daubline.model.Trial#getNumber()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Number();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see daubline.model.Trial#getKind()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Kind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getStatus <em>Status</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Status</em>'.
	 * @see daubline.model.Trial#getStatus()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Status();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getOn <em>On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>On</em>'.
	 * @see daubline.model.Trial#getOn()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_On();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Trial#getBuild <em>Build</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Build</em>'.
	 * @see daubline.model.Trial#getBuild()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Build();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Trial#getReconstruction <em>Reconstruction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Reconstruction</em>'.
	 * @see daubline.model.Trial#getReconstruction()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Reconstruction();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Trial#getRepeatOf <em>Repeat Of</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Repeat Of</em>'.
	 * @see daubline.model.Trial#getRepeatOf()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_RepeatOf();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Trial#getLeader <em>Leader</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Leader</em>'.
	 * @see daubline.model.Trial#getLeader()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Leader();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.Trial#getPeople <em>People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>People</em>'.
	 * @see daubline.model.Trial#getPeople()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_People();

	/**
	 * Returns the meta object for the reference list '{@link daubline.model.Trial#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Lots</em>'.
	 * @see daubline.model.Trial#getLots()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Lots();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#isExcluded <em>Excluded</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Excluded</em>'.
	 * @see daubline.model.Trial#isExcluded()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Excluded();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getExcludedBecause <em>Excluded Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Excluded Because</em>'.
	 * @see daubline.model.Trial#getExcludedBecause()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_ExcludedBecause();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getConclusion <em>Conclusion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Conclusion</em>'.
	 * @see daubline.model.Trial#getConclusion()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_Conclusion();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see daubline.model.Trial#getValues()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Values();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getPredictions <em>Predictions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Predictions</em>'.
	 * @see daubline.model.Trial#getPredictions()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Predictions();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getLog <em>Log</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Log</em>'.
	 * @see daubline.model.Trial#getLog()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Log();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getLoggers <em>Loggers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Loggers</em>'.
	 * @see daubline.model.Trial#getLoggers()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Loggers();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pieces</em>'.
	 * @see daubline.model.Trial#getPieces()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Pieces();

	/**
	 * Returns the meta object for the containment reference '{@link daubline.model.Trial#getRemains <em>Remains</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Remains</em>'.
	 * @see daubline.model.Trial#getRemains()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Remains();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getSamples <em>Samples</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Samples</em>'.
	 * @see daubline.model.Trial#getSamples()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Samples();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getAnalyses <em>Analyses</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Analyses</em>'.
	 * @see daubline.model.Trial#getAnalyses()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Analyses();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getFiles <em>Files</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Files</em>'.
	 * @see daubline.model.Trial#getFiles()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Files();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getVisits <em>Visits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Visits</em>'.
	 * @see daubline.model.Trial#getVisits()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Visits();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Trial#getReadyBecause <em>Ready Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ready Because</em>'.
	 * @see daubline.model.Trial#getReadyBecause()
	 * @see #getTrial()
	 * @generated
	 */
	EAttribute getTrial_ReadyBecause();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Trial#getMeasures <em>Measures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Measures</em>'.
	 * @see daubline.model.Trial#getMeasures()
	 * @see #getTrial()
	 * @generated
	 */
	EReference getTrial_Measures();

	/**
	 * Returns the meta object for class '{@link daubline.model.LogEntry <em>Log Entry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Log Entry</em>'.
	 * @see daubline.model.LogEntry
	 * @generated
	 */
	EClass getLogEntry();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see daubline.model.LogEntry#getAt()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_At();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getElapsed <em>Elapsed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Elapsed</em>'.
	 * @see daubline.model.LogEntry#getElapsed()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Elapsed();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see daubline.model.LogEntry#getKind()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Kind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see daubline.model.LogEntry#getText()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Text();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#isAbout <em>About</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>About</em>'.
	 * @see daubline.model.LogEntry#isAbout()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_About();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#isLate <em>Late</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Late</em>'.
	 * @see daubline.model.LogEntry#isLate()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Late();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#isInferred <em>Inferred</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inferred</em>'.
	 * @see daubline.model.LogEntry#isInferred()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Inferred();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getOriginal <em>Original</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Original</em>'.
	 * @see daubline.model.LogEntry#getOriginal()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Original();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.LogEntry#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>By</em>'.
	 * @see daubline.model.LogEntry#getBy()
	 * @see #getLogEntry()
	 * @generated
	 */
	EReference getLogEntry_By();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.LogEntry#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see daubline.model.LogEntry#getValues()
	 * @see #getLogEntry()
	 * @generated
	 */
	EReference getLogEntry_Values();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getIllegible <em>Illegible</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Illegible</em>'.
	 * @see daubline.model.LogEntry#getIllegible()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_Illegible();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.LogEntry#getCheckedBy <em>Checked By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Checked By</em>'.
	 * @see daubline.model.LogEntry#getCheckedBy()
	 * @see #getLogEntry()
	 * @generated
	 */
	EReference getLogEntry_CheckedBy();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LogEntry#getCheckedOn <em>Checked On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Checked On</em>'.
	 * @see daubline.model.LogEntry#getCheckedOn()
	 * @see #getLogEntry()
	 * @generated
	 */
	EAttribute getLogEntry_CheckedOn();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.LogEntry#getScan <em>Scan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Scan</em>'.
	 * @see daubline.model.LogEntry#getScan()
	 * @see #getLogEntry()
	 * @generated
	 */
	EReference getLogEntry_Scan();

	/**
	 * Returns the meta object for class '{@link daubline.model.Charge <em>Charge</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Charge</em>'.
	 * @see daubline.model.Charge
	 * @generated
	 */
	EClass getCharge();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Charge#getItems <em>Items</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Items</em>'.
	 * @see daubline.model.Charge#getItems()
	 * @see #getCharge()
	 * @generated
	 */
	EReference getCharge_Items();

	/**
	 * Returns the meta object for class '{@link daubline.model.ChargeItem <em>Charge Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Charge Item</em>'.
	 * @see daubline.model.ChargeItem
	 * @generated
	 */
	EClass getChargeItem();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ChargeItem#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see daubline.model.ChargeItem#getMaterial()
	 * @see #getChargeItem()
	 * @generated
	 */
	EAttribute getChargeItem_Material();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.ChargeItem#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lot</em>'.
	 * @see daubline.model.ChargeItem#getLot()
	 * @see #getChargeItem()
	 * @generated
	 */
	EReference getChargeItem_Lot();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ChargeItem#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see daubline.model.ChargeItem#getCount()
	 * @see #getChargeItem()
	 * @generated
	 */
	EAttribute getChargeItem_Count();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.ChargeItem#getUnitMass <em>Unit Mass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit Mass</em>'.
	 * @see daubline.model.ChargeItem#getUnitMass()
	 * @see #getChargeItem()
	 * @generated
	 */
	EAttribute getChargeItem_UnitMass();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.ChargeItem#getMeasure <em>Measure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Measure</em>'.
	 * @see daubline.model.ChargeItem#getMeasure()
	 * @see #getChargeItem()
	 * @generated
	 */
	EReference getChargeItem_Measure();

	/**
	 * Returns the meta object for class '{@link daubline.model.Measure <em>Measure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Measure</em>'.
	 * @see daubline.model.Measure
	 * @generated
	 */
	EClass getMeasure();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measure#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see daubline.model.Measure#getMaterial()
	 * @see #getMeasure()
	 * @generated
	 */
	EAttribute getMeasure_Material();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Measure#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Lot</em>'.
	 * @see daubline.model.Measure#getLot()
	 * @see #getMeasure()
	 * @generated
	 */
	EReference getMeasure_Lot();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Measure#getWeighings <em>Weighings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Weighings</em>'.
	 * @see daubline.model.Measure#getWeighings()
	 * @see #getMeasure()
	 * @generated
	 */
	EReference getMeasure_Weighings();

	/**
	 * Returns the meta object for class '{@link daubline.model.Incident <em>Incident</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Incident</em>'.
	 * @see daubline.model.Incident
	 * @generated
	 */
	EClass getIncident();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Incident#getDuration <em>Duration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Duration</em>'.
	 * @see daubline.model.Incident#getDuration()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_Duration();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Incident#getEffect <em>Effect</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Effect</em>'.
	 * @see daubline.model.Incident#getEffect()
	 * @see #getIncident()
	 * @generated
	 */
	EAttribute getIncident_Effect();

	/**
	 * Returns the meta object for class '{@link daubline.model.DataFile <em>Data File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Data File</em>'.
	 * @see daubline.model.DataFile
	 * @generated
	 */
	EClass getDataFile();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Path</em>'.
	 * @see daubline.model.DataFile#getPath()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Path();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see daubline.model.DataFile#getSha256()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Sha256();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getBytes <em>Bytes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bytes</em>'.
	 * @see daubline.model.DataFile#getBytes()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Bytes();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getMediaType <em>Media Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Media Type</em>'.
	 * @see daubline.model.DataFile#getMediaType()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_MediaType();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see daubline.model.DataFile#getKind()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Kind();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getCapturedAt <em>Captured At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Captured At</em>'.
	 * @see daubline.model.DataFile#getCapturedAt()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_CapturedAt();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getCaption <em>Caption</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Caption</em>'.
	 * @see daubline.model.DataFile#getCaption()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Caption();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getRights <em>Rights</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rights</em>'.
	 * @see daubline.model.DataFile#getRights()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Rights();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#isConsent <em>Consent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Consent</em>'.
	 * @see daubline.model.DataFile#isConsent()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_Consent();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.DataFile#getMeasurements <em>Measurements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Measurements</em>'.
	 * @see daubline.model.DataFile#getMeasurements()
	 * @see #getDataFile()
	 * @generated
	 */
	EReference getDataFile_Measurements();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.DataFile#getClockOffset <em>Clock Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Clock Offset</em>'.
	 * @see daubline.model.DataFile#getClockOffset()
	 * @see #getDataFile()
	 * @generated
	 */
	EAttribute getDataFile_ClockOffset();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.DataFile#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.DataFile#getBlindly()
	 * @see #getDataFile()
	 * @generated
	 */
	EReference getDataFile_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.Measurement <em>Measurement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Measurement</em>'.
	 * @see daubline.model.Measurement
	 * @generated
	 */
	EClass getMeasurement();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measurement#getX1 <em>X1</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X1</em>'.
	 * @see daubline.model.Measurement#getX1()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_X1();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measurement#getY1 <em>Y1</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y1</em>'.
	 * @see daubline.model.Measurement#getY1()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_Y1();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measurement#getX2 <em>X2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X2</em>'.
	 * @see daubline.model.Measurement#getX2()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_X2();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measurement#getY2 <em>Y2</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y2</em>'.
	 * @see daubline.model.Measurement#getY2()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_Y2();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measurement#isScale <em>Scale</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Scale</em>'.
	 * @see daubline.model.Measurement#isScale()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_Scale();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Measurement#getPointing <em>Pointing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pointing</em>'.
	 * @see daubline.model.Measurement#getPointing()
	 * @see #getMeasurement()
	 * @generated
	 */
	EAttribute getMeasurement_Pointing();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Measurement#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.Measurement#getBlindly()
	 * @see #getMeasurement()
	 * @generated
	 */
	EReference getMeasurement_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.LoggerFile <em>Logger File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Logger File</em>'.
	 * @see daubline.model.LoggerFile
	 * @generated
	 */
	EClass getLoggerFile();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getDelimiter <em>Delimiter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Delimiter</em>'.
	 * @see daubline.model.LoggerFile#getDelimiter()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_Delimiter();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getDecimal <em>Decimal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Decimal</em>'.
	 * @see daubline.model.LoggerFile#getDecimal()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_Decimal();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getHeaderRows <em>Header Rows</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Header Rows</em>'.
	 * @see daubline.model.LoggerFile#getHeaderRows()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_HeaderRows();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getTimeColumn <em>Time Column</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time Column</em>'.
	 * @see daubline.model.LoggerFile#getTimeColumn()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_TimeColumn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getTimeFormat <em>Time Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Time Format</em>'.
	 * @see daubline.model.LoggerFile#getTimeFormat()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_TimeFormat();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getStartAt <em>Start At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Start At</em>'.
	 * @see daubline.model.LoggerFile#getStartAt()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_StartAt();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getOffset <em>Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Offset</em>'.
	 * @see daubline.model.LoggerFile#getOffset()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_Offset();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.LoggerFile#getChannels <em>Channels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Channels</em>'.
	 * @see daubline.model.LoggerFile#getChannels()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EReference getLoggerFile_Channels();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.LoggerFile#getSyncMark <em>Sync Mark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sync Mark</em>'.
	 * @see daubline.model.LoggerFile#getSyncMark()
	 * @see #getLoggerFile()
	 * @generated
	 */
	EAttribute getLoggerFile_SyncMark();

	/**
	 * Returns the meta object for class '{@link daubline.model.Channel <em>Channel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Channel</em>'.
	 * @see daubline.model.Channel
	 * @generated
	 */
	EClass getChannel();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Channel#getColumn <em>Column</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Column</em>'.
	 * @see daubline.model.Channel#getColumn()
	 * @see #getChannel()
	 * @generated
	 */
	EAttribute getChannel_Column();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Channel#getVariable <em>Variable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Variable</em>'.
	 * @see daubline.model.Channel#getVariable()
	 * @see #getChannel()
	 * @generated
	 */
	EAttribute getChannel_Variable();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Channel#getUnit <em>Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Unit</em>'.
	 * @see daubline.model.Channel#getUnit()
	 * @see #getChannel()
	 * @generated
	 */
	EAttribute getChannel_Unit();

	/**
	 * Returns the meta object for class '{@link daubline.model.Piece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Piece</em>'.
	 * @see daubline.model.Piece
	 * @generated
	 */
	EClass getPiece();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Piece#getStage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stage</em>'.
	 * @see daubline.model.Piece#getStage()
	 * @see #getPiece()
	 * @generated
	 */
	EAttribute getPiece_Stage();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Piece#getValues <em>Values</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Values</em>'.
	 * @see daubline.model.Piece#getValues()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Values();

	/**
	 * Returns the meta object for the containment reference list '{@link daubline.model.Piece#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Pieces</em>'.
	 * @see daubline.model.Piece#getPieces()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Pieces();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Piece#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.Piece#getBlindly()
	 * @see #getPiece()
	 * @generated
	 */
	EReference getPiece_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.Sample <em>Sample</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sample</em>'.
	 * @see daubline.model.Sample
	 * @generated
	 */
	EClass getSample();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sample#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see daubline.model.Sample#getMaterial()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_Material();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sample#getQuestion <em>Question</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Question</em>'.
	 * @see daubline.model.Sample#getQuestion()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_Question();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Sample#getPiece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Piece</em>'.
	 * @see daubline.model.Sample#getPiece()
	 * @see #getSample()
	 * @generated
	 */
	EReference getSample_Piece();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sample#getTakenOn <em>Taken On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Taken On</em>'.
	 * @see daubline.model.Sample#getTakenOn()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_TakenOn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sample#getStoredAt <em>Stored At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stored At</em>'.
	 * @see daubline.model.Sample#getStoredAt()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_StoredAt();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Sample#getHolder <em>Holder</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Holder</em>'.
	 * @see daubline.model.Sample#getHolder()
	 * @see #getSample()
	 * @generated
	 */
	EAttribute getSample_Holder();

	/**
	 * Returns the meta object for the reference '{@link daubline.model.Sample#getBlindly <em>Blindly</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Blindly</em>'.
	 * @see daubline.model.Sample#getBlindly()
	 * @see #getSample()
	 * @generated
	 */
	EReference getSample_Blindly();

	/**
	 * Returns the meta object for class '{@link daubline.model.Visit <em>Visit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Visit</em>'.
	 * @see daubline.model.Visit
	 * @generated
	 */
	EClass getVisit();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Visit#getDueOn <em>Due On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Due On</em>'.
	 * @see daubline.model.Visit#getDueOn()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_DueOn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Visit#getVisitedOn <em>Visited On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Visited On</em>'.
	 * @see daubline.model.Visit#getVisitedOn()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_VisitedOn();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Visit#getNotVisitedBecause <em>Not Visited Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Not Visited Because</em>'.
	 * @see daubline.model.Visit#getNotVisitedBecause()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_NotVisitedBecause();

	/**
	 * Returns the meta object for the attribute '{@link daubline.model.Visit#getEndedBecause <em>Ended Because</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ended Because</em>'.
	 * @see daubline.model.Visit#getEndedBecause()
	 * @see #getVisit()
	 * @generated
	 */
	EAttribute getVisit_EndedBecause();

	/**
	 * Returns the meta object for the containment reference '{@link daubline.model.Visit#getRemains <em>Remains</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Remains</em>'.
	 * @see daubline.model.Visit#getRemains()
	 * @see #getVisit()
	 * @generated
	 */
	EReference getVisit_Remains();

	/**
	 * Returns the meta object for data type '{@link daubline.base.Basis <em>Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Basis</em>'.
	 * @see daubline.base.Basis
	 * @model instanceClass="daubline.base.Basis"
	 * @generated
	 */
	EDataType getBasis();

	/**
	 * Returns the meta object for data type '{@link daubline.base.Confidence <em>Confidence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Confidence</em>'.
	 * @see daubline.base.Confidence
	 * @model instanceClass="daubline.base.Confidence"
	 * @generated
	 */
	EDataType getConfidence();

	/**
	 * Returns the meta object for data type '{@link daubline.base.HowGot <em>How Got</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>How Got</em>'.
	 * @see daubline.base.HowGot
	 * @model instanceClass="daubline.base.HowGot"
	 * @generated
	 */
	EDataType getHowGot();

	/**
	 * Returns the meta object for data type '{@link daubline.base.IronBasis <em>Iron Basis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Iron Basis</em>'.
	 * @see daubline.base.IronBasis
	 * @model instanceClass="daubline.base.IronBasis"
	 * @generated
	 */
	EDataType getIronBasis();

	/**
	 * Returns the meta object for data type '{@link daubline.base.Material <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Material</em>'.
	 * @see daubline.base.Material
	 * @model instanceClass="daubline.base.Material"
	 * @generated
	 */
	EDataType getMaterial();

	/**
	 * Returns the meta object for data type '{@link daubline.base.Stage <em>Stage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Stage</em>'.
	 * @see daubline.base.Stage
	 * @model instanceClass="daubline.base.Stage"
	 * @generated
	 */
	EDataType getStage();

	/**
	 * Returns the meta object for data type '{@link daubline.base.TrialKind <em>Trial Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Trial Kind</em>'.
	 * @see daubline.base.TrialKind
	 * @model instanceClass="daubline.base.TrialKind"
	 * @generated
	 */
	EDataType getTrialKind();

	/**
	 * Returns the meta object for data type '{@link daubline.base.TrialStatus <em>Trial Status</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Trial Status</em>'.
	 * @see daubline.base.TrialStatus
	 * @model instanceClass="daubline.base.TrialStatus"
	 * @generated
	 */
	EDataType getTrialStatus();

	/**
	 * Returns the meta object for data type '{@link daubline.base.ValueKind <em>Value Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for data type '<em>Value Kind</em>'.
	 * @see daubline.base.ValueKind
	 * @model instanceClass="daubline.base.ValueKind"
	 * @generated
	 */
	EDataType getValueKind();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ModelFactory getModelFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link daubline.model.impl.IdentifiedImpl <em>Identified</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.IdentifiedImpl
		 * @see daubline.model.impl.ModelPackageImpl#getIdentified()
		 * @generated
		 */
		EClass IDENTIFIED = eINSTANCE.getIdentified();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute IDENTIFIED__ID = eINSTANCE.getIdentified_Id();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.NamedImpl <em>Named</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.NamedImpl
		 * @see daubline.model.impl.ModelPackageImpl#getNamed()
		 * @generated
		 */
		EClass NAMED = eINSTANCE.getNamed();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NAME = eINSTANCE.getNamed_Name();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NAMED__NOTE = eINSTANCE.getNamed_Note();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.StudyImpl <em>Study</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.StudyImpl
		 * @see daubline.model.impl.ModelPackageImpl#getStudy()
		 * @generated
		 */
		EClass STUDY = eINSTANCE.getStudy();

		/**
		 * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDY__FORMAT = eINSTANCE.getStudy_Format();

		/**
		 * The meta object literal for the '<em><b>Question</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDY__QUESTION = eINSTANCE.getStudy_Question();

		/**
		 * The meta object literal for the '<em><b>Language</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDY__LANGUAGE = eINSTANCE.getStudy_Language();

		/**
		 * The meta object literal for the '<em><b>Licence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDY__LICENCE = eINSTANCE.getStudy_Licence();

		/**
		 * The meta object literal for the '<em><b>Created On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STUDY__CREATED_ON = eINSTANCE.getStudy_CreatedOn();

		/**
		 * The meta object literal for the '<em><b>People</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__PEOPLE = eINSTANCE.getStudy_People();

		/**
		 * The meta object literal for the '<em><b>Citations</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__CITATIONS = eINSTANCE.getStudy_Citations();

		/**
		 * The meta object literal for the '<em><b>Variables</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__VARIABLES = eINSTANCE.getStudy_Variables();

		/**
		 * The meta object literal for the '<em><b>Residue Classes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__RESIDUE_CLASSES = eINSTANCE.getStudy_ResidueClasses();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__LOTS = eINSTANCE.getStudy_Lots();

		/**
		 * The meta object literal for the '<em><b>Reconstructions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__RECONSTRUCTIONS = eINSTANCE.getStudy_Reconstructions();

		/**
		 * The meta object literal for the '<em><b>Builds</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__BUILDS = eINSTANCE.getStudy_Builds();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__FILES = eINSTANCE.getStudy_Files();

		/**
		 * The meta object literal for the '<em><b>Settings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__SETTINGS = eINSTANCE.getStudy_Settings();

		/**
		 * The meta object literal for the '<em><b>Mappings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__MAPPINGS = eINSTANCE.getStudy_Mappings();

		/**
		 * The meta object literal for the '<em><b>Hazards</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__HAZARDS = eINSTANCE.getStudy_Hazards();

		/**
		 * The meta object literal for the '<em><b>Permissions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__PERMISSIONS = eINSTANCE.getStudy_Permissions();

		/**
		 * The meta object literal for the '<em><b>Sites</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__SITES = eINSTANCE.getStudy_Sites();

		/**
		 * The meta object literal for the '<em><b>Series</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__SERIES = eINSTANCE.getStudy_Series();

		/**
		 * The meta object literal for the '<em><b>Blind Recordings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STUDY__BLIND_RECORDINGS = eINSTANCE.getStudy_BlindRecordings();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.PersonImpl <em>Person</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.PersonImpl
		 * @see daubline.model.impl.ModelPackageImpl#getPerson()
		 * @generated
		 */
		EClass PERSON = eINSTANCE.getPerson();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__ROLE = eINSTANCE.getPerson_Role();

		/**
		 * The meta object literal for the '<em><b>Smelts Before</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__SMELTS_BEFORE = eINSTANCE.getPerson_SmeltsBefore();

		/**
		 * The meta object literal for the '<em><b>May Publish Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__MAY_PUBLISH_NAME = eINSTANCE.getPerson_MayPublishName();

		/**
		 * The meta object literal for the '<em><b>May Publish Photograph</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__MAY_PUBLISH_PHOTOGRAPH = eINSTANCE.getPerson_MayPublishPhotograph();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.CitationImpl <em>Citation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.CitationImpl
		 * @see daubline.model.impl.ModelPackageImpl#getCitation()
		 * @generated
		 */
		EClass CITATION = eINSTANCE.getCitation();

		/**
		 * The meta object literal for the '<em><b>Authors</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__AUTHORS = eINSTANCE.getCitation_Authors();

		/**
		 * The meta object literal for the '<em><b>Year</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__YEAR = eINSTANCE.getCitation_Year();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__TITLE = eINSTANCE.getCitation_Title();

		/**
		 * The meta object literal for the '<em><b>Container</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__CONTAINER = eINSTANCE.getCitation_Container();

		/**
		 * The meta object literal for the '<em><b>Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__VOLUME = eINSTANCE.getCitation_Volume();

		/**
		 * The meta object literal for the '<em><b>Pages</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__PAGES = eINSTANCE.getCitation_Pages();

		/**
		 * The meta object literal for the '<em><b>Publisher</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__PUBLISHER = eINSTANCE.getCitation_Publisher();

		/**
		 * The meta object literal for the '<em><b>Doi</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__DOI = eINSTANCE.getCitation_Doi();

		/**
		 * The meta object literal for the '<em><b>Url</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__URL = eINSTANCE.getCitation_Url();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__KIND = eINSTANCE.getCitation_Kind();

		/**
		 * The meta object literal for the '<em><b>Editors</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__EDITORS = eINSTANCE.getCitation_Editors();

		/**
		 * The meta object literal for the '<em><b>Issue</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__ISSUE = eINSTANCE.getCitation_Issue();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__PLACE = eINSTANCE.getCitation_Place();

		/**
		 * The meta object literal for the '<em><b>Isbn</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CITATION__ISBN = eINSTANCE.getCitation_Isbn();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.VariableDefinitionImpl <em>Variable Definition</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.VariableDefinitionImpl
		 * @see daubline.model.impl.ModelPackageImpl#getVariableDefinition()
		 * @generated
		 */
		EClass VARIABLE_DEFINITION = eINSTANCE.getVariableDefinition();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__NAME = eINSTANCE.getVariableDefinition_Name();

		/**
		 * The meta object literal for the '<em><b>Group</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__GROUP = eINSTANCE.getVariableDefinition_Group();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__TYPE = eINSTANCE.getVariableDefinition_Type();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__QUANTITY = eINSTANCE.getVariableDefinition_Quantity();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__UNIT = eINSTANCE.getVariableDefinition_Unit();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__LOW = eINSTANCE.getVariableDefinition_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__HIGH = eINSTANCE.getVariableDefinition_High();

		/**
		 * The meta object literal for the '<em><b>Stages</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__STAGES = eINSTANCE.getVariableDefinition_Stages();

		/**
		 * The meta object literal for the '<em><b>Categories</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__CATEGORIES = eINSTANCE.getVariableDefinition_Categories();

		/**
		 * The meta object literal for the '<em><b>Evidenced By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__EVIDENCED_BY = eINSTANCE.getVariableDefinition_EvidencedBy();

		/**
		 * The meta object literal for the '<em><b>Meaning</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__MEANING = eINSTANCE.getVariableDefinition_Meaning();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VARIABLE_DEFINITION__SOURCE = eINSTANCE.getVariableDefinition_Source();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ResidueClassImpl <em>Residue Class</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ResidueClassImpl
		 * @see daubline.model.impl.ModelPackageImpl#getResidueClass()
		 * @generated
		 */
		EClass RESIDUE_CLASS = eINSTANCE.getResidueClass();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESIDUE_CLASS__NAME = eINSTANCE.getResidueClass_Name();

		/**
		 * The meta object literal for the '<em><b>Definition</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESIDUE_CLASS__DEFINITION = eINSTANCE.getResidueClass_Definition();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESIDUE_CLASS__SOURCE = eINSTANCE.getResidueClass_Source();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SettingImpl <em>Setting</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SettingImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSetting()
		 * @generated
		 */
		EClass SETTING = eINSTANCE.getSetting();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTING__KEY = eINSTANCE.getSetting_Key();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTING__VALUE = eINSTANCE.getSetting_Value();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTING__UNIT = eINSTANCE.getSetting_Unit();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETTING__SOURCE = eINSTANCE.getSetting_Source();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ImportMappingImpl <em>Import Mapping</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ImportMappingImpl
		 * @see daubline.model.impl.ModelPackageImpl#getImportMapping()
		 * @generated
		 */
		EClass IMPORT_MAPPING = eINSTANCE.getImportMapping();

		/**
		 * The meta object literal for the '<em><b>Target</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute IMPORT_MAPPING__TARGET = eINSTANCE.getImportMapping_Target();

		/**
		 * The meta object literal for the '<em><b>Settings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference IMPORT_MAPPING__SETTINGS = eINSTANCE.getImportMapping_Settings();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.HazardImpl <em>Hazard</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.HazardImpl
		 * @see daubline.model.impl.ModelPackageImpl#getHazard()
		 * @generated
		 */
		EClass HAZARD = eINSTANCE.getHazard();

		/**
		 * The meta object literal for the '<em><b>Who</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HAZARD__WHO = eINSTANCE.getHazard_Who();

		/**
		 * The meta object literal for the '<em><b>Control</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HAZARD__CONTROL = eINSTANCE.getHazard_Control();

		/**
		 * The meta object literal for the '<em><b>Owner</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HAZARD__OWNER = eINSTANCE.getHazard_Owner();

		/**
		 * The meta object literal for the '<em><b>Review On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HAZARD__REVIEW_ON = eINSTANCE.getHazard_ReviewOn();

		/**
		 * The meta object literal for the '<em><b>Not Applicable Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HAZARD__NOT_APPLICABLE_BECAUSE = eINSTANCE.getHazard_NotApplicableBecause();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.PermissionImpl <em>Permission</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.PermissionImpl
		 * @see daubline.model.impl.ModelPackageImpl#getPermission()
		 * @generated
		 */
		EClass PERMISSION = eINSTANCE.getPermission();

		/**
		 * The meta object literal for the '<em><b>Reference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERMISSION__REFERENCE = eINSTANCE.getPermission_Reference();

		/**
		 * The meta object literal for the '<em><b>Issuer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERMISSION__ISSUER = eINSTANCE.getPermission_Issuer();

		/**
		 * The meta object literal for the '<em><b>Valid From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERMISSION__VALID_FROM = eINSTANCE.getPermission_ValidFrom();

		/**
		 * The meta object literal for the '<em><b>Valid Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERMISSION__VALID_UNTIL = eINSTANCE.getPermission_ValidUntil();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ReadingImpl <em>Reading</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ReadingImpl
		 * @see daubline.model.impl.ModelPackageImpl#getReading()
		 * @generated
		 */
		EClass READING = eINSTANCE.getReading();

		/**
		 * The meta object literal for the '<em><b>Variable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VARIABLE = eINSTANCE.getReading_Variable();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__KIND = eINSTANCE.getReading_Kind();

		/**
		 * The meta object literal for the '<em><b>Typed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__TYPED = eINSTANCE.getReading_Typed();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__UNIT = eINSTANCE.getReading_Unit();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VALUE = eINSTANCE.getReading_Value();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__LOW = eINSTANCE.getReading_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__HIGH = eINSTANCE.getReading_High();

		/**
		 * The meta object literal for the '<em><b>Sigma</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__SIGMA = eINSTANCE.getReading_Sigma();

		/**
		 * The meta object literal for the '<em><b>Category</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CATEGORY = eINSTANCE.getReading_Category();

		/**
		 * The meta object literal for the '<em><b>How</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__HOW = eINSTANCE.getReading_How();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference READING__BY = eINSTANCE.getReading_By();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__AT = eINSTANCE.getReading_At();

		/**
		 * The meta object literal for the '<em><b>Citation</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference READING__CITATION = eINSTANCE.getReading_Citation();

		/**
		 * The meta object literal for the '<em><b>Page</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__PAGE = eINSTANCE.getReading_Page();

		/**
		 * The meta object literal for the '<em><b>Verbatim</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__VERBATIM = eINSTANCE.getReading_Verbatim();

		/**
		 * The meta object literal for the '<em><b>Confidence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__CONFIDENCE = eINSTANCE.getReading_Confidence();

		/**
		 * The meta object literal for the '<em><b>Sampling Fraction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__SAMPLING_FRACTION = eINSTANCE.getReading_SamplingFraction();

		/**
		 * The meta object literal for the '<em><b>Picked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__PICKED = eINSTANCE.getReading_Picked();

		/**
		 * The meta object literal for the '<em><b>Picked Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__PICKED_BECAUSE = eINSTANCE.getReading_PickedBecause();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute READING__NOTE = eINSTANCE.getReading_Note();

		/**
		 * The meta object literal for the '<em><b>Earlier</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference READING__EARLIER = eINSTANCE.getReading_Earlier();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.EarlierImpl <em>Earlier</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.EarlierImpl
		 * @see daubline.model.impl.ModelPackageImpl#getEarlier()
		 * @generated
		 */
		EClass EARLIER = eINSTANCE.getEarlier();

		/**
		 * The meta object literal for the '<em><b>Typed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EARLIER__TYPED = eINSTANCE.getEarlier_Typed();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EARLIER__UNIT = eINSTANCE.getEarlier_Unit();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EARLIER__KIND = eINSTANCE.getEarlier_Kind();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EARLIER__VALUE = eINSTANCE.getEarlier_Value();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference EARLIER__BY = eINSTANCE.getEarlier_By();

		/**
		 * The meta object literal for the '<em><b>Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EARLIER__UNTIL = eINSTANCE.getEarlier_Until();

		/**
		 * The meta object literal for the '<em><b>Change</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EARLIER__CHANGE = eINSTANCE.getEarlier_Change();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ClaimImpl <em>Claim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ClaimImpl
		 * @see daubline.model.impl.ModelPackageImpl#getClaim()
		 * @generated
		 */
		EClass CLAIM = eINSTANCE.getClaim();

		/**
		 * The meta object literal for the '<em><b>Preservation Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__PRESERVATION_LIMIT = eINSTANCE.getClaim_PreservationLimit();

		/**
		 * The meta object literal for the '<em><b>Limit Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__LIMIT_BECAUSE = eINSTANCE.getClaim_LimitBecause();

		/**
		 * The meta object literal for the '<em><b>Measurement</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLAIM__MEASUREMENT = eINSTANCE.getClaim_Measurement();

		/**
		 * The meta object literal for the '<em><b>Formula</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__FORMULA = eINSTANCE.getClaim_Formula();

		/**
		 * The meta object literal for the '<em><b>Inputs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLAIM__INPUTS = eINSTANCE.getClaim_Inputs();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLAIM__BLINDLY = eINSTANCE.getClaim_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ClaimInputImpl <em>Claim Input</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ClaimInputImpl
		 * @see daubline.model.impl.ModelPackageImpl#getClaimInput()
		 * @generated
		 */
		EClass CLAIM_INPUT = eINSTANCE.getClaimInput();

		/**
		 * The meta object literal for the '<em><b>Symbol</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM_INPUT__SYMBOL = eINSTANCE.getClaimInput_Symbol();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.StagedValueImpl <em>Staged Value</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.StagedValueImpl
		 * @see daubline.model.impl.ModelPackageImpl#getStagedValue()
		 * @generated
		 */
		EClass STAGED_VALUE = eINSTANCE.getStagedValue();

		/**
		 * The meta object literal for the '<em><b>Stage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STAGED_VALUE__STAGE = eINSTANCE.getStagedValue_Stage();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ChoiceImpl <em>Choice</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ChoiceImpl
		 * @see daubline.model.impl.ModelPackageImpl#getChoice()
		 * @generated
		 */
		EClass CHOICE = eINSTANCE.getChoice();

		/**
		 * The meta object literal for the '<em><b>Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHOICE__BASIS = eINSTANCE.getChoice_Basis();

		/**
		 * The meta object literal for the '<em><b>Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHOICE__BECAUSE = eINSTANCE.getChoice_Because();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.PredictionImpl <em>Prediction</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.PredictionImpl
		 * @see daubline.model.impl.ModelPackageImpl#getPrediction()
		 * @generated
		 */
		EClass PREDICTION = eINSTANCE.getPrediction();

		/**
		 * The meta object literal for the '<em><b>Stated On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREDICTION__STATED_ON = eINSTANCE.getPrediction_StatedOn();

		/**
		 * The meta object literal for the '<em><b>Locked</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREDICTION__LOCKED = eINSTANCE.getPrediction_Locked();

		/**
		 * The meta object literal for the '<em><b>Reconstruction</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PREDICTION__RECONSTRUCTION = eINSTANCE.getPrediction_Reconstruction();

		/**
		 * The meta object literal for the '<em><b>Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PREDICTION__ENGINE = eINSTANCE.getPrediction_Engine();

		/**
		 * The meta object literal for the '<em><b>Revises</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PREDICTION__REVISES = eINSTANCE.getPrediction_Revises();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ResidueMassImpl <em>Residue Mass</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ResidueMassImpl
		 * @see daubline.model.impl.ModelPackageImpl#getResidueMass()
		 * @generated
		 */
		EClass RESIDUE_MASS = eINSTANCE.getResidueMass();

		/**
		 * The meta object literal for the '<em><b>Residue Class</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RESIDUE_MASS__RESIDUE_CLASS = eINSTANCE.getResidueMass_ResidueClass();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RESIDUE_MASS__COUNT = eINSTANCE.getResidueMass_Count();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RESIDUE_MASS__BLINDLY = eINSTANCE.getResidueMass_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ComponentImpl <em>Component</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ComponentImpl
		 * @see daubline.model.impl.ModelPackageImpl#getComponent()
		 * @generated
		 */
		EClass COMPONENT = eINSTANCE.getComponent();

		/**
		 * The meta object literal for the '<em><b>Symbol</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPONENT__SYMBOL = eINSTANCE.getComponent_Symbol();

		/**
		 * The meta object literal for the '<em><b>Printed As</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPONENT__PRINTED_AS = eINSTANCE.getComponent_PrintedAs();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.AnalysisImpl <em>Analysis</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.AnalysisImpl
		 * @see daubline.model.impl.ModelPackageImpl#getAnalysis()
		 * @generated
		 */
		EClass ANALYSIS = eINSTANCE.getAnalysis();

		/**
		 * The meta object literal for the '<em><b>Sample</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ANALYSIS__SAMPLE = eINSTANCE.getAnalysis_Sample();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__MATERIAL = eINSTANCE.getAnalysis_Material();

		/**
		 * The meta object literal for the '<em><b>Specimen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__SPECIMEN = eINSTANCE.getAnalysis_Specimen();

		/**
		 * The meta object literal for the '<em><b>Method</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__METHOD = eINSTANCE.getAnalysis_Method();

		/**
		 * The meta object literal for the '<em><b>Instrument</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__INSTRUMENT = eINSTANCE.getAnalysis_Instrument();

		/**
		 * The meta object literal for the '<em><b>Standards</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__STANDARDS = eINSTANCE.getAnalysis_Standards();

		/**
		 * The meta object literal for the '<em><b>Conditions</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__CONDITIONS = eINSTANCE.getAnalysis_Conditions();

		/**
		 * The meta object literal for the '<em><b>Accuracy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__ACCURACY = eINSTANCE.getAnalysis_Accuracy();

		/**
		 * The meta object literal for the '<em><b>Laboratory</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__LABORATORY = eINSTANCE.getAnalysis_Laboratory();

		/**
		 * The meta object literal for the '<em><b>On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__ON = eINSTANCE.getAnalysis_On();

		/**
		 * The meta object literal for the '<em><b>Areas</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__AREAS = eINSTANCE.getAnalysis_Areas();

		/**
		 * The meta object literal for the '<em><b>Iron Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__IRON_BASIS = eINSTANCE.getAnalysis_IronBasis();

		/**
		 * The meta object literal for the '<em><b>Replicate</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__REPLICATE = eINSTANCE.getAnalysis_Replicate();

		/**
		 * The meta object literal for the '<em><b>Total Typed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__TOTAL_TYPED = eINSTANCE.getAnalysis_TotalTyped();

		/**
		 * The meta object literal for the '<em><b>Total</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__TOTAL = eINSTANCE.getAnalysis_Total();

		/**
		 * The meta object literal for the '<em><b>Citation</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ANALYSIS__CITATION = eINSTANCE.getAnalysis_Citation();

		/**
		 * The meta object literal for the '<em><b>Page</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ANALYSIS__PAGE = eINSTANCE.getAnalysis_Page();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ANALYSIS__FILE = eINSTANCE.getAnalysis_File();

		/**
		 * The meta object literal for the '<em><b>Components</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ANALYSIS__COMPONENTS = eINSTANCE.getAnalysis_Components();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SheetImpl <em>Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SheetImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSheet()
		 * @generated
		 */
		EClass SHEET = eINSTANCE.getSheet();

		/**
		 * The meta object literal for the '<em><b>Recorded By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__RECORDED_BY = eINSTANCE.getSheet_RecordedBy();

		/**
		 * The meta object literal for the '<em><b>Recorded On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__RECORDED_ON = eINSTANCE.getSheet_RecordedOn();

		/**
		 * The meta object literal for the '<em><b>Blind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__BLIND = eINSTANCE.getSheet_Blind();

		/**
		 * The meta object literal for the '<em><b>Sampling Fraction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHEET__SAMPLING_FRACTION = eINSTANCE.getSheet_SamplingFraction();

		/**
		 * The meta object literal for the '<em><b>Claims</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__CLAIMS = eINSTANCE.getSheet_Claims();

		/**
		 * The meta object literal for the '<em><b>Residues</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__RESIDUES = eINSTANCE.getSheet_Residues();

		/**
		 * The meta object literal for the '<em><b>Analyses</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__ANALYSES = eINSTANCE.getSheet_Analyses();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__FILES = eINSTANCE.getSheet_Files();

		/**
		 * The meta object literal for the '<em><b>Zones</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__ZONES = eINSTANCE.getSheet_Zones();

		/**
		 * The meta object literal for the '<em><b>Spread</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__SPREAD = eINSTANCE.getSheet_Spread();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHEET__BLINDLY = eINSTANCE.getSheet_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.EvidenceSheetImpl <em>Evidence Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.EvidenceSheetImpl
		 * @see daubline.model.impl.ModelPackageImpl#getEvidenceSheet()
		 * @generated
		 */
		EClass EVIDENCE_SHEET = eINSTANCE.getEvidenceSheet();

		/**
		 * The meta object literal for the '<em><b>Feature</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EVIDENCE_SHEET__FEATURE = eINSTANCE.getEvidenceSheet_Feature();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.RemainsSheetImpl <em>Remains Sheet</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.RemainsSheetImpl
		 * @see daubline.model.impl.ModelPackageImpl#getRemainsSheet()
		 * @generated
		 */
		EClass REMAINS_SHEET = eINSTANCE.getRemainsSheet();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.BlindRecordingImpl <em>Blind Recording</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.BlindRecordingImpl
		 * @see daubline.model.impl.ModelPackageImpl#getBlindRecording()
		 * @generated
		 */
		EClass BLIND_RECORDING = eINSTANCE.getBlindRecording();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BLIND_RECORDING__BY = eINSTANCE.getBlindRecording_By();

		/**
		 * The meta object literal for the '<em><b>Begun</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BLIND_RECORDING__BEGUN = eINSTANCE.getBlindRecording_Begun();

		/**
		 * The meta object literal for the '<em><b>Ended</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BLIND_RECORDING__ENDED = eINSTANCE.getBlindRecording_Ended();

		/**
		 * The meta object literal for the '<em><b>Ended By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BLIND_RECORDING__ENDED_BY = eINSTANCE.getBlindRecording_EndedBy();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.WallZoneImpl <em>Wall Zone</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.WallZoneImpl
		 * @see daubline.model.impl.ModelPackageImpl#getWallZone()
		 * @generated
		 */
		EClass WALL_ZONE = eINSTANCE.getWallZone();

		/**
		 * The meta object literal for the '<em><b>Clock</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL_ZONE__CLOCK = eINSTANCE.getWallZone_Clock();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL_ZONE__LOW = eINSTANCE.getWallZone_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL_ZONE__HIGH = eINSTANCE.getWallZone_High();

		/**
		 * The meta object literal for the '<em><b>State</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL_ZONE__STATE = eINSTANCE.getWallZone_State();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WALL_ZONE__NOTE = eINSTANCE.getWallZone_Note();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WALL_ZONE__BLINDLY = eINSTANCE.getWallZone_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SpreadSquareImpl <em>Spread Square</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SpreadSquareImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSpreadSquare()
		 * @generated
		 */
		EClass SPREAD_SQUARE = eINSTANCE.getSpreadSquare();

		/**
		 * The meta object literal for the '<em><b>East</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPREAD_SQUARE__EAST = eINSTANCE.getSpreadSquare_East();

		/**
		 * The meta object literal for the '<em><b>North</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPREAD_SQUARE__NORTH = eINSTANCE.getSpreadSquare_North();

		/**
		 * The meta object literal for the '<em><b>Side</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPREAD_SQUARE__SIDE = eINSTANCE.getSpreadSquare_Side();

		/**
		 * The meta object literal for the '<em><b>Residue Class</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPREAD_SQUARE__RESIDUE_CLASS = eINSTANCE.getSpreadSquare_ResidueClass();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SPREAD_SQUARE__BLINDLY = eINSTANCE.getSpreadSquare_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SiteImpl <em>Site</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SiteImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSite()
		 * @generated
		 */
		EClass SITE = eINSTANCE.getSite();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__PLACE = eINSTANCE.getSite_Place();

		/**
		 * The meta object literal for the '<em><b>Region</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__REGION = eINSTANCE.getSite_Region();

		/**
		 * The meta object literal for the '<em><b>Country</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__COUNTRY = eINSTANCE.getSite_Country();

		/**
		 * The meta object literal for the '<em><b>Latitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__LATITUDE = eINSTANCE.getSite_Latitude();

		/**
		 * The meta object literal for the '<em><b>Longitude</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__LONGITUDE = eINSTANCE.getSite_Longitude();

		/**
		 * The meta object literal for the '<em><b>Sensitive</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SITE__SENSITIVE = eINSTANCE.getSite_Sensitive();

		/**
		 * The meta object literal for the '<em><b>Contexts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SITE__CONTEXTS = eINSTANCE.getSite_Contexts();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ContextImpl <em>Context</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ContextImpl
		 * @see daubline.model.impl.ModelPackageImpl#getContext()
		 * @generated
		 */
		EClass CONTEXT = eINSTANCE.getContext();

		/**
		 * The meta object literal for the '<em><b>Period</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONTEXT__PERIOD = eINSTANCE.getContext_Period();

		/**
		 * The meta object literal for the '<em><b>Phase</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONTEXT__PHASE = eINSTANCE.getContext_Phase();

		/**
		 * The meta object literal for the '<em><b>Deposit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONTEXT__DEPOSIT = eINSTANCE.getContext_Deposit();

		/**
		 * The meta object literal for the '<em><b>Sheets</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONTEXT__SHEETS = eINSTANCE.getContext_Sheets();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ReconstructionImpl <em>Reconstruction</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ReconstructionImpl
		 * @see daubline.model.impl.ModelPackageImpl#getReconstruction()
		 * @generated
		 */
		EClass RECONSTRUCTION = eINSTANCE.getReconstruction();

		/**
		 * The meta object literal for the '<em><b>Hypothesis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECONSTRUCTION__HYPOTHESIS = eINSTANCE.getReconstruction_Hypothesis();

		/**
		 * The meta object literal for the '<em><b>Variant Of</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECONSTRUCTION__VARIANT_OF = eINSTANCE.getReconstruction_VariantOf();

		/**
		 * The meta object literal for the '<em><b>Sheets</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECONSTRUCTION__SHEETS = eINSTANCE.getReconstruction_Sheets();

		/**
		 * The meta object literal for the '<em><b>Retired</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECONSTRUCTION__RETIRED = eINSTANCE.getReconstruction_Retired();

		/**
		 * The meta object literal for the '<em><b>Retired Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RECONSTRUCTION__RETIRED_BECAUSE = eINSTANCE.getReconstruction_RetiredBecause();

		/**
		 * The meta object literal for the '<em><b>Choices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RECONSTRUCTION__CHOICES = eINSTANCE.getReconstruction_Choices();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.LotImpl <em>Lot</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.LotImpl
		 * @see daubline.model.impl.ModelPackageImpl#getLot()
		 * @generated
		 */
		EClass LOT = eINSTANCE.getLot();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__MATERIAL = eINSTANCE.getLot_Material();

		/**
		 * The meta object literal for the '<em><b>Supplier</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__SUPPLIER = eINSTANCE.getLot_Supplier();

		/**
		 * The meta object literal for the '<em><b>Origin</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__ORIGIN = eINSTANCE.getLot_Origin();

		/**
		 * The meta object literal for the '<em><b>Delivered On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__DELIVERED_ON = eINSTANCE.getLot_DeliveredOn();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOT__FROM = eINSTANCE.getLot_From();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOT__VALUES = eINSTANCE.getLot_Values();

		/**
		 * The meta object literal for the '<em><b>Treatments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOT__TREATMENTS = eINSTANCE.getLot_Treatments();

		/**
		 * The meta object literal for the '<em><b>Analyses</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOT__ANALYSES = eINSTANCE.getLot_Analyses();

		/**
		 * The meta object literal for the '<em><b>Moisture Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOT__MOISTURE_BASIS = eINSTANCE.getLot_MoistureBasis();

		/**
		 * The meta object literal for the '<em><b>Recipe</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOT__RECIPE = eINSTANCE.getLot_Recipe();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.TreatmentImpl <em>Treatment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.TreatmentImpl
		 * @see daubline.model.impl.ModelPackageImpl#getTreatment()
		 * @generated
		 */
		EClass TREATMENT = eINSTANCE.getTreatment();

		/**
		 * The meta object literal for the '<em><b>Step</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT__STEP = eINSTANCE.getTreatment_Step();

		/**
		 * The meta object literal for the '<em><b>On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT__ON = eINSTANCE.getTreatment_On();

		/**
		 * The meta object literal for the '<em><b>Mass In</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT__MASS_IN = eINSTANCE.getTreatment_MassIn();

		/**
		 * The meta object literal for the '<em><b>Mass Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT__MASS_OUT = eINSTANCE.getTreatment_MassOut();

		/**
		 * The meta object literal for the '<em><b>Lost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT__LOST = eINSTANCE.getTreatment_Lost();

		/**
		 * The meta object literal for the '<em><b>Sigma</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TREATMENT__SIGMA = eINSTANCE.getTreatment_Sigma();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TREATMENT__VALUES = eINSTANCE.getTreatment_Values();

		/**
		 * The meta object literal for the '<em><b>Bands</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TREATMENT__BANDS = eINSTANCE.getTreatment_Bands();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SizeBandImpl <em>Size Band</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SizeBandImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSizeBand()
		 * @generated
		 */
		EClass SIZE_BAND = eINSTANCE.getSizeBand();

		/**
		 * The meta object literal for the '<em><b>Mesh From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIZE_BAND__MESH_FROM = eINSTANCE.getSizeBand_MeshFrom();

		/**
		 * The meta object literal for the '<em><b>Mesh To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIZE_BAND__MESH_TO = eINSTANCE.getSizeBand_MeshTo();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIZE_BAND__LOT = eINSTANCE.getSizeBand_Lot();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.MixPartImpl <em>Mix Part</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.MixPartImpl
		 * @see daubline.model.impl.ModelPackageImpl#getMixPart()
		 * @generated
		 */
		EClass MIX_PART = eINSTANCE.getMixPart();

		/**
		 * The meta object literal for the '<em><b>Part</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_PART__PART = eINSTANCE.getMixPart_Part();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MIX_PART__LOT = eINSTANCE.getMixPart_Lot();

		/**
		 * The meta object literal for the '<em><b>By Volume</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_PART__BY_VOLUME = eINSTANCE.getMixPart_ByVolume();

		/**
		 * The meta object literal for the '<em><b>Bulk Density</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MIX_PART__BULK_DENSITY = eINSTANCE.getMixPart_BulkDensity();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.FurnaceBuildImpl <em>Furnace Build</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.FurnaceBuildImpl
		 * @see daubline.model.impl.ModelPackageImpl#getFurnaceBuild()
		 * @generated
		 */
		EClass FURNACE_BUILD = eINSTANCE.getFurnaceBuild();

		/**
		 * The meta object literal for the '<em><b>Reconstruction</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FURNACE_BUILD__RECONSTRUCTION = eINSTANCE.getFurnaceBuild_Reconstruction();

		/**
		 * The meta object literal for the '<em><b>Built On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FURNACE_BUILD__BUILT_ON = eINSTANCE.getFurnaceBuild_BuiltOn();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FURNACE_BUILD__LOTS = eINSTANCE.getFurnaceBuild_Lots();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FURNACE_BUILD__VALUES = eINSTANCE.getFurnaceBuild_Values();

		/**
		 * The meta object literal for the '<em><b>Log</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FURNACE_BUILD__LOG = eINSTANCE.getFurnaceBuild_Log();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SeriesImpl <em>Series</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SeriesImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSeries()
		 * @generated
		 */
		EClass SERIES = eINSTANCE.getSeries();

		/**
		 * The meta object literal for the '<em><b>Question</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__QUESTION = eINSTANCE.getSeries_Question();

		/**
		 * The meta object literal for the '<em><b>Plan</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__PLAN = eINSTANCE.getSeries_Plan();

		/**
		 * The meta object literal for the '<em><b>Budget</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__BUDGET = eINSTANCE.getSeries_Budget();

		/**
		 * The meta object literal for the '<em><b>Frozen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__FROZEN = eINSTANCE.getSeries_Frozen();

		/**
		 * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__SEED = eINSTANCE.getSeries_Seed();

		/**
		 * The meta object literal for the '<em><b>Stop Criteria</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__STOP_CRITERIA = eINSTANCE.getSeries_StopCriteria();

		/**
		 * The meta object literal for the '<em><b>Factors</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__FACTORS = eINSTANCE.getSeries_Factors();

		/**
		 * The meta object literal for the '<em><b>Roles</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__ROLES = eINSTANCE.getSeries_Roles();

		/**
		 * The meta object literal for the '<em><b>Trials</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__TRIALS = eINSTANCE.getSeries_Trials();

		/**
		 * The meta object literal for the '<em><b>Aim</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__AIM = eINSTANCE.getSeries_Aim();

		/**
		 * The meta object literal for the '<em><b>Forbidden</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__FORBIDDEN = eINSTANCE.getSeries_Forbidden();

		/**
		 * The meta object literal for the '<em><b>Provisions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__PROVISIONS = eINSTANCE.getSeries_Provisions();

		/**
		 * The meta object literal for the '<em><b>Labour</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__LABOUR = eINSTANCE.getSeries_Labour();

		/**
		 * The meta object literal for the '<em><b>Plans</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SERIES__PLANS = eINSTANCE.getSeries_Plans();

		/**
		 * The meta object literal for the '<em><b>Most Trials</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__MOST_TRIALS = eINSTANCE.getSeries_MostTrials();

		/**
		 * The meta object literal for the '<em><b>Centre Trials</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__CENTRE_TRIALS = eINSTANCE.getSeries_CentreTrials();

		/**
		 * The meta object literal for the '<em><b>Repeat Trials</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__REPEAT_TRIALS = eINSTANCE.getSeries_RepeatTrials();

		/**
		 * The meta object literal for the '<em><b>Burns Per Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__BURNS_PER_DAY = eINSTANCE.getSeries_BurnsPerDay();

		/**
		 * The meta object literal for the '<em><b>Furnace Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__FURNACE_RATIO = eINSTANCE.getSeries_FurnaceRatio();

		/**
		 * The meta object literal for the '<em><b>Day Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SERIES__DAY_RATIO = eINSTANCE.getSeries_DayRatio();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.FactorImpl <em>Factor</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.FactorImpl
		 * @see daubline.model.impl.ModelPackageImpl#getFactor()
		 * @generated
		 */
		EClass FACTOR = eINSTANCE.getFactor();

		/**
		 * The meta object literal for the '<em><b>Variable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FACTOR__VARIABLE = eINSTANCE.getFactor_Variable();

		/**
		 * The meta object literal for the '<em><b>Levels</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FACTOR__LEVELS = eINSTANCE.getFactor_Levels();

		/**
		 * The meta object literal for the '<em><b>Hard To Change</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FACTOR__HARD_TO_CHANGE = eINSTANCE.getFactor_HardToChange();

		/**
		 * The meta object literal for the '<em><b>Daily</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FACTOR__DAILY = eINSTANCE.getFactor_Daily();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ForbiddenCombinationImpl <em>Forbidden Combination</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ForbiddenCombinationImpl
		 * @see daubline.model.impl.ModelPackageImpl#getForbiddenCombination()
		 * @generated
		 */
		EClass FORBIDDEN_COMBINATION = eINSTANCE.getForbiddenCombination();

		/**
		 * The meta object literal for the '<em><b>Conditions</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FORBIDDEN_COMBINATION__CONDITIONS = eINSTANCE.getForbiddenCombination_Conditions();

		/**
		 * The meta object literal for the '<em><b>Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FORBIDDEN_COMBINATION__BECAUSE = eINSTANCE.getForbiddenCombination_Because();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ProvisionImpl <em>Provision</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ProvisionImpl
		 * @see daubline.model.impl.ModelPackageImpl#getProvision()
		 * @generated
		 */
		EClass PROVISION = eINSTANCE.getProvision();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__UNIT = eINSTANCE.getProvision_Unit();

		/**
		 * The meta object literal for the '<em><b>Available</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__AVAILABLE = eINSTANCE.getProvision_Available();

		/**
		 * The meta object literal for the '<em><b>Moisture</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__MOISTURE = eINSTANCE.getProvision_Moisture();

		/**
		 * The meta object literal for the '<em><b>Dry Basis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__DRY_BASIS = eINSTANCE.getProvision_DryBasis();

		/**
		 * The meta object literal for the '<em><b>Losses</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__LOSSES = eINSTANCE.getProvision_Losses();

		/**
		 * The meta object literal for the '<em><b>Reserve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__RESERVE = eINSTANCE.getProvision_Reserve();

		/**
		 * The meta object literal for the '<em><b>Once</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__ONCE = eINSTANCE.getProvision_Once();

		/**
		 * The meta object literal for the '<em><b>Per Trial</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__PER_TRIAL = eINSTANCE.getProvision_PerTrial();

		/**
		 * The meta object literal for the '<em><b>Per Furnace</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__PER_FURNACE = eINSTANCE.getProvision_PerFurnace();

		/**
		 * The meta object literal for the '<em><b>Per Refit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PROVISION__PER_REFIT = eINSTANCE.getProvision_PerRefit();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PROVISION__LOTS = eINSTANCE.getProvision_Lots();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.LabourImpl <em>Labour</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.LabourImpl
		 * @see daubline.model.impl.ModelPackageImpl#getLabour()
		 * @generated
		 */
		EClass LABOUR = eINSTANCE.getLabour();

		/**
		 * The meta object literal for the '<em><b>Team</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__TEAM = eINSTANCE.getLabour_Team();

		/**
		 * The meta object literal for the '<em><b>First Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__FIRST_DAY = eINSTANCE.getLabour_FirstDay();

		/**
		 * The meta object literal for the '<em><b>Last Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__LAST_DAY = eINSTANCE.getLabour_LastDay();

		/**
		 * The meta object literal for the '<em><b>Weekdays</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__WEEKDAYS = eINSTANCE.getLabour_Weekdays();

		/**
		 * The meta object literal for the '<em><b>Days Off</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__DAYS_OFF = eINSTANCE.getLabour_DaysOff();

		/**
		 * The meta object literal for the '<em><b>Build Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__BUILD_DAYS = eINSTANCE.getLabour_BuildDays();

		/**
		 * The meta object literal for the '<em><b>Build People</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__BUILD_PEOPLE = eINSTANCE.getLabour_BuildPeople();

		/**
		 * The meta object literal for the '<em><b>Dry Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__DRY_DAYS = eINSTANCE.getLabour_DryDays();

		/**
		 * The meta object literal for the '<em><b>Burn Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__BURN_DAYS = eINSTANCE.getLabour_BurnDays();

		/**
		 * The meta object literal for the '<em><b>Burn People</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__BURN_PEOPLE = eINSTANCE.getLabour_BurnPeople();

		/**
		 * The meta object literal for the '<em><b>Refit Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__REFIT_DAYS = eINSTANCE.getLabour_RefitDays();

		/**
		 * The meta object literal for the '<em><b>Refit People</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__REFIT_PEOPLE = eINSTANCE.getLabour_RefitPeople();

		/**
		 * The meta object literal for the '<em><b>Refit Dry Days</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__REFIT_DRY_DAYS = eINSTANCE.getLabour_RefitDryDays();

		/**
		 * The meta object literal for the '<em><b>Firings</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__FIRINGS = eINSTANCE.getLabour_Firings();

		/**
		 * The meta object literal for the '<em><b>Failure Share</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__FAILURE_SHARE = eINSTANCE.getLabour_FailureShare();

		/**
		 * The meta object literal for the '<em><b>Assurance</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LABOUR__ASSURANCE = eINSTANCE.getLabour_Assurance();

		/**
		 * The meta object literal for the '<em><b>Permissions</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LABOUR__PERMISSIONS = eINSTANCE.getLabour_Permissions();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.FrozenPlanImpl <em>Frozen Plan</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.FrozenPlanImpl
		 * @see daubline.model.impl.ModelPackageImpl#getFrozenPlan()
		 * @generated
		 */
		EClass FROZEN_PLAN = eINSTANCE.getFrozenPlan();

		/**
		 * The meta object literal for the '<em><b>Aim</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__AIM = eINSTANCE.getFrozenPlan_Aim();

		/**
		 * The meta object literal for the '<em><b>Seed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__SEED = eINSTANCE.getFrozenPlan_Seed();

		/**
		 * The meta object literal for the '<em><b>Algorithm</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__ALGORITHM = eINSTANCE.getFrozenPlan_Algorithm();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__VERSION = eINSTANCE.getFrozenPlan_Version();

		/**
		 * The meta object literal for the '<em><b>Frozen At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__FROZEN_AT = eINSTANCE.getFrozenPlan_FrozenAt();

		/**
		 * The meta object literal for the '<em><b>Engine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__ENGINE = eINSTANCE.getFrozenPlan_Engine();

		/**
		 * The meta object literal for the '<em><b>Furnace Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__FURNACE_RATIO = eINSTANCE.getFrozenPlan_FurnaceRatio();

		/**
		 * The meta object literal for the '<em><b>Day Ratio</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__DAY_RATIO = eINSTANCE.getFrozenPlan_DayRatio();

		/**
		 * The meta object literal for the '<em><b>Restriction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__RESTRICTION = eINSTANCE.getFrozenPlan_Restriction();

		/**
		 * The meta object literal for the '<em><b>Reasons</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FROZEN_PLAN__REASONS = eINSTANCE.getFrozenPlan_Reasons();

		/**
		 * The meta object literal for the '<em><b>Runs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FROZEN_PLAN__RUNS = eINSTANCE.getFrozenPlan_Runs();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.PlannedRunImpl <em>Planned Run</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.PlannedRunImpl
		 * @see daubline.model.impl.ModelPackageImpl#getPlannedRun()
		 * @generated
		 */
		EClass PLANNED_RUN = eINSTANCE.getPlannedRun();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANNED_RUN__PLACE = eINSTANCE.getPlannedRun_Place();

		/**
		 * The meta object literal for the '<em><b>Furnace</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANNED_RUN__FURNACE = eINSTANCE.getPlannedRun_Furnace();

		/**
		 * The meta object literal for the '<em><b>Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANNED_RUN__DAY = eINSTANCE.getPlannedRun_Day();

		/**
		 * The meta object literal for the '<em><b>Trial</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLANNED_RUN__TRIAL = eINSTANCE.getPlannedRun_Trial();

		/**
		 * The meta object literal for the '<em><b>Settings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLANNED_RUN__SETTINGS = eINSTANCE.getPlannedRun_Settings();

		/**
		 * The meta object literal for the '<em><b>Deviation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANNED_RUN__DEVIATION = eINSTANCE.getPlannedRun_Deviation();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.RoleAssignmentImpl <em>Role Assignment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.RoleAssignmentImpl
		 * @see daubline.model.impl.ModelPackageImpl#getRoleAssignment()
		 * @generated
		 */
		EClass ROLE_ASSIGNMENT = eINSTANCE.getRoleAssignment();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE_ASSIGNMENT__ROLE = eINSTANCE.getRoleAssignment_Role();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ROLE_ASSIGNMENT__PERSON = eINSTANCE.getRoleAssignment_Person();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE_ASSIGNMENT__FROM = eINSTANCE.getRoleAssignment_From();

		/**
		 * The meta object literal for the '<em><b>Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE_ASSIGNMENT__UNTIL = eINSTANCE.getRoleAssignment_Until();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.TrialImpl <em>Trial</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.TrialImpl
		 * @see daubline.model.impl.ModelPackageImpl#getTrial()
		 * @generated
		 */
		EClass TRIAL = eINSTANCE.getTrial();

		/**
		 * The meta object literal for the '<em><b>Number</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__NUMBER = eINSTANCE.getTrial_Number();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__KIND = eINSTANCE.getTrial_Kind();

		/**
		 * The meta object literal for the '<em><b>Status</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__STATUS = eINSTANCE.getTrial_Status();

		/**
		 * The meta object literal for the '<em><b>On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__ON = eINSTANCE.getTrial_On();

		/**
		 * The meta object literal for the '<em><b>Build</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__BUILD = eINSTANCE.getTrial_Build();

		/**
		 * The meta object literal for the '<em><b>Reconstruction</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__RECONSTRUCTION = eINSTANCE.getTrial_Reconstruction();

		/**
		 * The meta object literal for the '<em><b>Repeat Of</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__REPEAT_OF = eINSTANCE.getTrial_RepeatOf();

		/**
		 * The meta object literal for the '<em><b>Leader</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__LEADER = eINSTANCE.getTrial_Leader();

		/**
		 * The meta object literal for the '<em><b>People</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__PEOPLE = eINSTANCE.getTrial_People();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__LOTS = eINSTANCE.getTrial_Lots();

		/**
		 * The meta object literal for the '<em><b>Excluded</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__EXCLUDED = eINSTANCE.getTrial_Excluded();

		/**
		 * The meta object literal for the '<em><b>Excluded Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__EXCLUDED_BECAUSE = eINSTANCE.getTrial_ExcludedBecause();

		/**
		 * The meta object literal for the '<em><b>Conclusion</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__CONCLUSION = eINSTANCE.getTrial_Conclusion();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__VALUES = eINSTANCE.getTrial_Values();

		/**
		 * The meta object literal for the '<em><b>Predictions</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__PREDICTIONS = eINSTANCE.getTrial_Predictions();

		/**
		 * The meta object literal for the '<em><b>Log</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__LOG = eINSTANCE.getTrial_Log();

		/**
		 * The meta object literal for the '<em><b>Loggers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__LOGGERS = eINSTANCE.getTrial_Loggers();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__PIECES = eINSTANCE.getTrial_Pieces();

		/**
		 * The meta object literal for the '<em><b>Remains</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__REMAINS = eINSTANCE.getTrial_Remains();

		/**
		 * The meta object literal for the '<em><b>Samples</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__SAMPLES = eINSTANCE.getTrial_Samples();

		/**
		 * The meta object literal for the '<em><b>Analyses</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__ANALYSES = eINSTANCE.getTrial_Analyses();

		/**
		 * The meta object literal for the '<em><b>Files</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__FILES = eINSTANCE.getTrial_Files();

		/**
		 * The meta object literal for the '<em><b>Visits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__VISITS = eINSTANCE.getTrial_Visits();

		/**
		 * The meta object literal for the '<em><b>Ready Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRIAL__READY_BECAUSE = eINSTANCE.getTrial_ReadyBecause();

		/**
		 * The meta object literal for the '<em><b>Measures</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TRIAL__MEASURES = eINSTANCE.getTrial_Measures();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.LogEntryImpl <em>Log Entry</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.LogEntryImpl
		 * @see daubline.model.impl.ModelPackageImpl#getLogEntry()
		 * @generated
		 */
		EClass LOG_ENTRY = eINSTANCE.getLogEntry();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__AT = eINSTANCE.getLogEntry_At();

		/**
		 * The meta object literal for the '<em><b>Elapsed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__ELAPSED = eINSTANCE.getLogEntry_Elapsed();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__KIND = eINSTANCE.getLogEntry_Kind();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__TEXT = eINSTANCE.getLogEntry_Text();

		/**
		 * The meta object literal for the '<em><b>About</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__ABOUT = eINSTANCE.getLogEntry_About();

		/**
		 * The meta object literal for the '<em><b>Late</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__LATE = eINSTANCE.getLogEntry_Late();

		/**
		 * The meta object literal for the '<em><b>Inferred</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__INFERRED = eINSTANCE.getLogEntry_Inferred();

		/**
		 * The meta object literal for the '<em><b>Original</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__ORIGINAL = eINSTANCE.getLogEntry_Original();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOG_ENTRY__BY = eINSTANCE.getLogEntry_By();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOG_ENTRY__VALUES = eINSTANCE.getLogEntry_Values();

		/**
		 * The meta object literal for the '<em><b>Illegible</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__ILLEGIBLE = eINSTANCE.getLogEntry_Illegible();

		/**
		 * The meta object literal for the '<em><b>Checked By</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOG_ENTRY__CHECKED_BY = eINSTANCE.getLogEntry_CheckedBy();

		/**
		 * The meta object literal for the '<em><b>Checked On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOG_ENTRY__CHECKED_ON = eINSTANCE.getLogEntry_CheckedOn();

		/**
		 * The meta object literal for the '<em><b>Scan</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOG_ENTRY__SCAN = eINSTANCE.getLogEntry_Scan();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ChargeImpl <em>Charge</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ChargeImpl
		 * @see daubline.model.impl.ModelPackageImpl#getCharge()
		 * @generated
		 */
		EClass CHARGE = eINSTANCE.getCharge();

		/**
		 * The meta object literal for the '<em><b>Items</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CHARGE__ITEMS = eINSTANCE.getCharge_Items();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ChargeItemImpl <em>Charge Item</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ChargeItemImpl
		 * @see daubline.model.impl.ModelPackageImpl#getChargeItem()
		 * @generated
		 */
		EClass CHARGE_ITEM = eINSTANCE.getChargeItem();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHARGE_ITEM__MATERIAL = eINSTANCE.getChargeItem_Material();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CHARGE_ITEM__LOT = eINSTANCE.getChargeItem_Lot();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHARGE_ITEM__COUNT = eINSTANCE.getChargeItem_Count();

		/**
		 * The meta object literal for the '<em><b>Unit Mass</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHARGE_ITEM__UNIT_MASS = eINSTANCE.getChargeItem_UnitMass();

		/**
		 * The meta object literal for the '<em><b>Measure</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CHARGE_ITEM__MEASURE = eINSTANCE.getChargeItem_Measure();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.MeasureImpl <em>Measure</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.MeasureImpl
		 * @see daubline.model.impl.ModelPackageImpl#getMeasure()
		 * @generated
		 */
		EClass MEASURE = eINSTANCE.getMeasure();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASURE__MATERIAL = eINSTANCE.getMeasure_Material();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASURE__LOT = eINSTANCE.getMeasure_Lot();

		/**
		 * The meta object literal for the '<em><b>Weighings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASURE__WEIGHINGS = eINSTANCE.getMeasure_Weighings();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.IncidentImpl <em>Incident</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.IncidentImpl
		 * @see daubline.model.impl.ModelPackageImpl#getIncident()
		 * @generated
		 */
		EClass INCIDENT = eINSTANCE.getIncident();

		/**
		 * The meta object literal for the '<em><b>Duration</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__DURATION = eINSTANCE.getIncident_Duration();

		/**
		 * The meta object literal for the '<em><b>Effect</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute INCIDENT__EFFECT = eINSTANCE.getIncident_Effect();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.DataFileImpl <em>Data File</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.DataFileImpl
		 * @see daubline.model.impl.ModelPackageImpl#getDataFile()
		 * @generated
		 */
		EClass DATA_FILE = eINSTANCE.getDataFile();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__PATH = eINSTANCE.getDataFile_Path();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__SHA256 = eINSTANCE.getDataFile_Sha256();

		/**
		 * The meta object literal for the '<em><b>Bytes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__BYTES = eINSTANCE.getDataFile_Bytes();

		/**
		 * The meta object literal for the '<em><b>Media Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__MEDIA_TYPE = eINSTANCE.getDataFile_MediaType();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__KIND = eINSTANCE.getDataFile_Kind();

		/**
		 * The meta object literal for the '<em><b>Captured At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__CAPTURED_AT = eINSTANCE.getDataFile_CapturedAt();

		/**
		 * The meta object literal for the '<em><b>Caption</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__CAPTION = eINSTANCE.getDataFile_Caption();

		/**
		 * The meta object literal for the '<em><b>Rights</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__RIGHTS = eINSTANCE.getDataFile_Rights();

		/**
		 * The meta object literal for the '<em><b>Consent</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__CONSENT = eINSTANCE.getDataFile_Consent();

		/**
		 * The meta object literal for the '<em><b>Measurements</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DATA_FILE__MEASUREMENTS = eINSTANCE.getDataFile_Measurements();

		/**
		 * The meta object literal for the '<em><b>Clock Offset</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DATA_FILE__CLOCK_OFFSET = eINSTANCE.getDataFile_ClockOffset();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DATA_FILE__BLINDLY = eINSTANCE.getDataFile_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.MeasurementImpl <em>Measurement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.MeasurementImpl
		 * @see daubline.model.impl.ModelPackageImpl#getMeasurement()
		 * @generated
		 */
		EClass MEASUREMENT = eINSTANCE.getMeasurement();

		/**
		 * The meta object literal for the '<em><b>X1</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__X1 = eINSTANCE.getMeasurement_X1();

		/**
		 * The meta object literal for the '<em><b>Y1</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__Y1 = eINSTANCE.getMeasurement_Y1();

		/**
		 * The meta object literal for the '<em><b>X2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__X2 = eINSTANCE.getMeasurement_X2();

		/**
		 * The meta object literal for the '<em><b>Y2</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__Y2 = eINSTANCE.getMeasurement_Y2();

		/**
		 * The meta object literal for the '<em><b>Scale</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__SCALE = eINSTANCE.getMeasurement_Scale();

		/**
		 * The meta object literal for the '<em><b>Pointing</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MEASUREMENT__POINTING = eINSTANCE.getMeasurement_Pointing();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MEASUREMENT__BLINDLY = eINSTANCE.getMeasurement_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.LoggerFileImpl <em>Logger File</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.LoggerFileImpl
		 * @see daubline.model.impl.ModelPackageImpl#getLoggerFile()
		 * @generated
		 */
		EClass LOGGER_FILE = eINSTANCE.getLoggerFile();

		/**
		 * The meta object literal for the '<em><b>Delimiter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__DELIMITER = eINSTANCE.getLoggerFile_Delimiter();

		/**
		 * The meta object literal for the '<em><b>Decimal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__DECIMAL = eINSTANCE.getLoggerFile_Decimal();

		/**
		 * The meta object literal for the '<em><b>Header Rows</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__HEADER_ROWS = eINSTANCE.getLoggerFile_HeaderRows();

		/**
		 * The meta object literal for the '<em><b>Time Column</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__TIME_COLUMN = eINSTANCE.getLoggerFile_TimeColumn();

		/**
		 * The meta object literal for the '<em><b>Time Format</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__TIME_FORMAT = eINSTANCE.getLoggerFile_TimeFormat();

		/**
		 * The meta object literal for the '<em><b>Start At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__START_AT = eINSTANCE.getLoggerFile_StartAt();

		/**
		 * The meta object literal for the '<em><b>Offset</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__OFFSET = eINSTANCE.getLoggerFile_Offset();

		/**
		 * The meta object literal for the '<em><b>Channels</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOGGER_FILE__CHANNELS = eINSTANCE.getLoggerFile_Channels();

		/**
		 * The meta object literal for the '<em><b>Sync Mark</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGER_FILE__SYNC_MARK = eINSTANCE.getLoggerFile_SyncMark();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.ChannelImpl <em>Channel</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.ChannelImpl
		 * @see daubline.model.impl.ModelPackageImpl#getChannel()
		 * @generated
		 */
		EClass CHANNEL = eINSTANCE.getChannel();

		/**
		 * The meta object literal for the '<em><b>Column</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANNEL__COLUMN = eINSTANCE.getChannel_Column();

		/**
		 * The meta object literal for the '<em><b>Variable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANNEL__VARIABLE = eINSTANCE.getChannel_Variable();

		/**
		 * The meta object literal for the '<em><b>Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANNEL__UNIT = eINSTANCE.getChannel_Unit();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.PieceImpl <em>Piece</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.PieceImpl
		 * @see daubline.model.impl.ModelPackageImpl#getPiece()
		 * @generated
		 */
		EClass PIECE = eINSTANCE.getPiece();

		/**
		 * The meta object literal for the '<em><b>Stage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PIECE__STAGE = eINSTANCE.getPiece_Stage();

		/**
		 * The meta object literal for the '<em><b>Values</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__VALUES = eINSTANCE.getPiece_Values();

		/**
		 * The meta object literal for the '<em><b>Pieces</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__PIECES = eINSTANCE.getPiece_Pieces();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PIECE__BLINDLY = eINSTANCE.getPiece_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.SampleImpl <em>Sample</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.SampleImpl
		 * @see daubline.model.impl.ModelPackageImpl#getSample()
		 * @generated
		 */
		EClass SAMPLE = eINSTANCE.getSample();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__MATERIAL = eINSTANCE.getSample_Material();

		/**
		 * The meta object literal for the '<em><b>Question</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__QUESTION = eINSTANCE.getSample_Question();

		/**
		 * The meta object literal for the '<em><b>Piece</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SAMPLE__PIECE = eINSTANCE.getSample_Piece();

		/**
		 * The meta object literal for the '<em><b>Taken On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__TAKEN_ON = eINSTANCE.getSample_TakenOn();

		/**
		 * The meta object literal for the '<em><b>Stored At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__STORED_AT = eINSTANCE.getSample_StoredAt();

		/**
		 * The meta object literal for the '<em><b>Holder</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SAMPLE__HOLDER = eINSTANCE.getSample_Holder();

		/**
		 * The meta object literal for the '<em><b>Blindly</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SAMPLE__BLINDLY = eINSTANCE.getSample_Blindly();

		/**
		 * The meta object literal for the '{@link daubline.model.impl.VisitImpl <em>Visit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.model.impl.VisitImpl
		 * @see daubline.model.impl.ModelPackageImpl#getVisit()
		 * @generated
		 */
		EClass VISIT = eINSTANCE.getVisit();

		/**
		 * The meta object literal for the '<em><b>Due On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__DUE_ON = eINSTANCE.getVisit_DueOn();

		/**
		 * The meta object literal for the '<em><b>Visited On</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__VISITED_ON = eINSTANCE.getVisit_VisitedOn();

		/**
		 * The meta object literal for the '<em><b>Not Visited Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__NOT_VISITED_BECAUSE = eINSTANCE.getVisit_NotVisitedBecause();

		/**
		 * The meta object literal for the '<em><b>Ended Because</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VISIT__ENDED_BECAUSE = eINSTANCE.getVisit_EndedBecause();

		/**
		 * The meta object literal for the '<em><b>Remains</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference VISIT__REMAINS = eINSTANCE.getVisit_Remains();

		/**
		 * The meta object literal for the '<em>Basis</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.Basis
		 * @see daubline.model.impl.ModelPackageImpl#getBasis()
		 * @generated
		 */
		EDataType BASIS = eINSTANCE.getBasis();

		/**
		 * The meta object literal for the '<em>Confidence</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.Confidence
		 * @see daubline.model.impl.ModelPackageImpl#getConfidence()
		 * @generated
		 */
		EDataType CONFIDENCE = eINSTANCE.getConfidence();

		/**
		 * The meta object literal for the '<em>How Got</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.HowGot
		 * @see daubline.model.impl.ModelPackageImpl#getHowGot()
		 * @generated
		 */
		EDataType HOW_GOT = eINSTANCE.getHowGot();

		/**
		 * The meta object literal for the '<em>Iron Basis</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.IronBasis
		 * @see daubline.model.impl.ModelPackageImpl#getIronBasis()
		 * @generated
		 */
		EDataType IRON_BASIS = eINSTANCE.getIronBasis();

		/**
		 * The meta object literal for the '<em>Material</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.Material
		 * @see daubline.model.impl.ModelPackageImpl#getMaterial()
		 * @generated
		 */
		EDataType MATERIAL = eINSTANCE.getMaterial();

		/**
		 * The meta object literal for the '<em>Stage</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.Stage
		 * @see daubline.model.impl.ModelPackageImpl#getStage()
		 * @generated
		 */
		EDataType STAGE = eINSTANCE.getStage();

		/**
		 * The meta object literal for the '<em>Trial Kind</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.TrialKind
		 * @see daubline.model.impl.ModelPackageImpl#getTrialKind()
		 * @generated
		 */
		EDataType TRIAL_KIND = eINSTANCE.getTrialKind();

		/**
		 * The meta object literal for the '<em>Trial Status</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.TrialStatus
		 * @see daubline.model.impl.ModelPackageImpl#getTrialStatus()
		 * @generated
		 */
		EDataType TRIAL_STATUS = eINSTANCE.getTrialStatus();

		/**
		 * The meta object literal for the '<em>Value Kind</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see daubline.base.ValueKind
		 * @see daubline.model.impl.ModelPackageImpl#getValueKind()
		 * @generated
		 */
		EDataType VALUE_KIND = eINSTANCE.getValueKind();

	}

} //ModelPackage

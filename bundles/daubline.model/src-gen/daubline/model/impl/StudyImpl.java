/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.Citation;
import daubline.model.DataFile;
import daubline.model.FurnaceBuild;
import daubline.model.Hazard;
import daubline.model.ImportMapping;
import daubline.model.Lot;
import daubline.model.ModelPackage;
import daubline.model.Permission;
import daubline.model.Person;
import daubline.model.Reconstruction;
import daubline.model.ResidueClass;
import daubline.model.Series;
import daubline.model.Setting;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.VariableDefinition;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Study</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.StudyImpl#getFormat <em>Format</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getQuestion <em>Question</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getLanguage <em>Language</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getLicence <em>Licence</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getCreatedOn <em>Created On</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getPeople <em>People</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getCitations <em>Citations</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getVariables <em>Variables</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getResidueClasses <em>Residue Classes</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getLots <em>Lots</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getReconstructions <em>Reconstructions</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getBuilds <em>Builds</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getFiles <em>Files</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getSettings <em>Settings</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getMappings <em>Mappings</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getHazards <em>Hazards</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getPermissions <em>Permissions</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getSites <em>Sites</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getSeries <em>Series</em>}</li>
 *   <li>{@link daubline.model.impl.StudyImpl#getBlindRecordings <em>Blind Recordings</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StudyImpl extends NamedImpl implements Study {
	/**
	 * The default value of the '{@link #getFormat() <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormat()
	 * @generated
	 * @ordered
	 */
	protected static final int FORMAT_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getFormat() <em>Format</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormat()
	 * @generated
	 * @ordered
	 */
	protected int format = FORMAT_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected static final String QUESTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected String question = QUESTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getLanguage() <em>Language</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLanguage()
	 * @generated
	 * @ordered
	 */
	protected static final String LANGUAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLanguage() <em>Language</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLanguage()
	 * @generated
	 * @ordered
	 */
	protected String language = LANGUAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLicence() <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLicence()
	 * @generated
	 * @ordered
	 */
	protected static final String LICENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLicence() <em>Licence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLicence()
	 * @generated
	 * @ordered
	 */
	protected String licence = LICENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCreatedOn() <em>Created On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedOn()
	 * @generated
	 * @ordered
	 */
	protected static final String CREATED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCreatedOn() <em>Created On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCreatedOn()
	 * @generated
	 * @ordered
	 */
	protected String createdOn = CREATED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPeople() <em>People</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeople()
	 * @generated
	 * @ordered
	 */
	protected EList<Person> people;

	/**
	 * The cached value of the '{@link #getCitations() <em>Citations</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCitations()
	 * @generated
	 * @ordered
	 */
	protected EList<Citation> citations;

	/**
	 * The cached value of the '{@link #getVariables() <em>Variables</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariables()
	 * @generated
	 * @ordered
	 */
	protected EList<VariableDefinition> variables;

	/**
	 * The cached value of the '{@link #getResidueClasses() <em>Residue Classes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidueClasses()
	 * @generated
	 * @ordered
	 */
	protected EList<ResidueClass> residueClasses;

	/**
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<Lot> lots;

	/**
	 * The cached value of the '{@link #getReconstructions() <em>Reconstructions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReconstructions()
	 * @generated
	 * @ordered
	 */
	protected EList<Reconstruction> reconstructions;

	/**
	 * The cached value of the '{@link #getBuilds() <em>Builds</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuilds()
	 * @generated
	 * @ordered
	 */
	protected EList<FurnaceBuild> builds;

	/**
	 * The cached value of the '{@link #getFiles() <em>Files</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiles()
	 * @generated
	 * @ordered
	 */
	protected EList<DataFile> files;

	/**
	 * The cached value of the '{@link #getSettings() <em>Settings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettings()
	 * @generated
	 * @ordered
	 */
	protected EList<Setting> settings;

	/**
	 * The cached value of the '{@link #getMappings() <em>Mappings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMappings()
	 * @generated
	 * @ordered
	 */
	protected EList<ImportMapping> mappings;

	/**
	 * The cached value of the '{@link #getHazards() <em>Hazards</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHazards()
	 * @generated
	 * @ordered
	 */
	protected EList<Hazard> hazards;

	/**
	 * The cached value of the '{@link #getPermissions() <em>Permissions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPermissions()
	 * @generated
	 * @ordered
	 */
	protected EList<Permission> permissions;

	/**
	 * The cached value of the '{@link #getSites() <em>Sites</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSites()
	 * @generated
	 * @ordered
	 */
	protected EList<Site> sites;

	/**
	 * The cached value of the '{@link #getSeries() <em>Series</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeries()
	 * @generated
	 * @ordered
	 */
	protected EList<Series> series;

	/**
	 * The cached value of the '{@link #getBlindRecordings() <em>Blind Recordings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlindRecordings()
	 * @generated
	 * @ordered
	 */
	protected EList<BlindRecording> blindRecordings;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StudyImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.STUDY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFormat() {
		return format;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormat(int newFormat) {
		int oldFormat = format;
		format = newFormat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STUDY__FORMAT, oldFormat, format));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuestion() {
		return question;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuestion(String newQuestion) {
		String oldQuestion = question;
		question = newQuestion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STUDY__QUESTION, oldQuestion, question));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLanguage() {
		return language;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLanguage(String newLanguage) {
		String oldLanguage = language;
		language = newLanguage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STUDY__LANGUAGE, oldLanguage, language));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLicence() {
		return licence;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLicence(String newLicence) {
		String oldLicence = licence;
		licence = newLicence;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STUDY__LICENCE, oldLicence, licence));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCreatedOn() {
		return createdOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCreatedOn(String newCreatedOn) {
		String oldCreatedOn = createdOn;
		createdOn = newCreatedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STUDY__CREATED_ON, oldCreatedOn, createdOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Person> getPeople() {
		if (people == null) {
			people = new EObjectContainmentEList<Person>(Person.class, this, ModelPackage.STUDY__PEOPLE);
		}
		return people;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Citation> getCitations() {
		if (citations == null) {
			citations = new EObjectContainmentEList<Citation>(Citation.class, this, ModelPackage.STUDY__CITATIONS);
		}
		return citations;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<VariableDefinition> getVariables() {
		if (variables == null) {
			variables = new EObjectContainmentEList<VariableDefinition>(VariableDefinition.class, this, ModelPackage.STUDY__VARIABLES);
		}
		return variables;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ResidueClass> getResidueClasses() {
		if (residueClasses == null) {
			residueClasses = new EObjectContainmentEList<ResidueClass>(ResidueClass.class, this, ModelPackage.STUDY__RESIDUE_CLASSES);
		}
		return residueClasses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lot> getLots() {
		if (lots == null) {
			lots = new EObjectContainmentEList<Lot>(Lot.class, this, ModelPackage.STUDY__LOTS);
		}
		return lots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reconstruction> getReconstructions() {
		if (reconstructions == null) {
			reconstructions = new EObjectContainmentEList<Reconstruction>(Reconstruction.class, this, ModelPackage.STUDY__RECONSTRUCTIONS);
		}
		return reconstructions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<FurnaceBuild> getBuilds() {
		if (builds == null) {
			builds = new EObjectContainmentEList<FurnaceBuild>(FurnaceBuild.class, this, ModelPackage.STUDY__BUILDS);
		}
		return builds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DataFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<DataFile>(DataFile.class, this, ModelPackage.STUDY__FILES);
		}
		return files;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Setting> getSettings() {
		if (settings == null) {
			settings = new EObjectContainmentEList<Setting>(Setting.class, this, ModelPackage.STUDY__SETTINGS);
		}
		return settings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ImportMapping> getMappings() {
		if (mappings == null) {
			mappings = new EObjectContainmentEList<ImportMapping>(ImportMapping.class, this, ModelPackage.STUDY__MAPPINGS);
		}
		return mappings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Hazard> getHazards() {
		if (hazards == null) {
			hazards = new EObjectContainmentEList<Hazard>(Hazard.class, this, ModelPackage.STUDY__HAZARDS);
		}
		return hazards;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Permission> getPermissions() {
		if (permissions == null) {
			permissions = new EObjectContainmentEList<Permission>(Permission.class, this, ModelPackage.STUDY__PERMISSIONS);
		}
		return permissions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Site> getSites() {
		if (sites == null) {
			sites = new EObjectContainmentEList.Resolving<Site>(Site.class, this, ModelPackage.STUDY__SITES);
		}
		return sites;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Series> getSeries() {
		if (series == null) {
			series = new EObjectContainmentEList.Resolving<Series>(Series.class, this, ModelPackage.STUDY__SERIES);
		}
		return series;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BlindRecording> getBlindRecordings() {
		if (blindRecordings == null) {
			blindRecordings = new EObjectContainmentEList<BlindRecording>(BlindRecording.class, this, ModelPackage.STUDY__BLIND_RECORDINGS);
		}
		return blindRecordings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.STUDY__PEOPLE:
				return ((InternalEList<?>)getPeople()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__CITATIONS:
				return ((InternalEList<?>)getCitations()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__VARIABLES:
				return ((InternalEList<?>)getVariables()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__RESIDUE_CLASSES:
				return ((InternalEList<?>)getResidueClasses()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__LOTS:
				return ((InternalEList<?>)getLots()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__RECONSTRUCTIONS:
				return ((InternalEList<?>)getReconstructions()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__BUILDS:
				return ((InternalEList<?>)getBuilds()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__FILES:
				return ((InternalEList<?>)getFiles()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__SETTINGS:
				return ((InternalEList<?>)getSettings()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__MAPPINGS:
				return ((InternalEList<?>)getMappings()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__HAZARDS:
				return ((InternalEList<?>)getHazards()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__PERMISSIONS:
				return ((InternalEList<?>)getPermissions()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__SITES:
				return ((InternalEList<?>)getSites()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__SERIES:
				return ((InternalEList<?>)getSeries()).basicRemove(otherEnd, msgs);
			case ModelPackage.STUDY__BLIND_RECORDINGS:
				return ((InternalEList<?>)getBlindRecordings()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.STUDY__FORMAT:
				return getFormat();
			case ModelPackage.STUDY__QUESTION:
				return getQuestion();
			case ModelPackage.STUDY__LANGUAGE:
				return getLanguage();
			case ModelPackage.STUDY__LICENCE:
				return getLicence();
			case ModelPackage.STUDY__CREATED_ON:
				return getCreatedOn();
			case ModelPackage.STUDY__PEOPLE:
				return getPeople();
			case ModelPackage.STUDY__CITATIONS:
				return getCitations();
			case ModelPackage.STUDY__VARIABLES:
				return getVariables();
			case ModelPackage.STUDY__RESIDUE_CLASSES:
				return getResidueClasses();
			case ModelPackage.STUDY__LOTS:
				return getLots();
			case ModelPackage.STUDY__RECONSTRUCTIONS:
				return getReconstructions();
			case ModelPackage.STUDY__BUILDS:
				return getBuilds();
			case ModelPackage.STUDY__FILES:
				return getFiles();
			case ModelPackage.STUDY__SETTINGS:
				return getSettings();
			case ModelPackage.STUDY__MAPPINGS:
				return getMappings();
			case ModelPackage.STUDY__HAZARDS:
				return getHazards();
			case ModelPackage.STUDY__PERMISSIONS:
				return getPermissions();
			case ModelPackage.STUDY__SITES:
				return getSites();
			case ModelPackage.STUDY__SERIES:
				return getSeries();
			case ModelPackage.STUDY__BLIND_RECORDINGS:
				return getBlindRecordings();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.STUDY__FORMAT:
				setFormat((Integer)newValue);
				return;
			case ModelPackage.STUDY__QUESTION:
				setQuestion((String)newValue);
				return;
			case ModelPackage.STUDY__LANGUAGE:
				setLanguage((String)newValue);
				return;
			case ModelPackage.STUDY__LICENCE:
				setLicence((String)newValue);
				return;
			case ModelPackage.STUDY__CREATED_ON:
				setCreatedOn((String)newValue);
				return;
			case ModelPackage.STUDY__PEOPLE:
				getPeople().clear();
				getPeople().addAll((Collection<? extends Person>)newValue);
				return;
			case ModelPackage.STUDY__CITATIONS:
				getCitations().clear();
				getCitations().addAll((Collection<? extends Citation>)newValue);
				return;
			case ModelPackage.STUDY__VARIABLES:
				getVariables().clear();
				getVariables().addAll((Collection<? extends VariableDefinition>)newValue);
				return;
			case ModelPackage.STUDY__RESIDUE_CLASSES:
				getResidueClasses().clear();
				getResidueClasses().addAll((Collection<? extends ResidueClass>)newValue);
				return;
			case ModelPackage.STUDY__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends Lot>)newValue);
				return;
			case ModelPackage.STUDY__RECONSTRUCTIONS:
				getReconstructions().clear();
				getReconstructions().addAll((Collection<? extends Reconstruction>)newValue);
				return;
			case ModelPackage.STUDY__BUILDS:
				getBuilds().clear();
				getBuilds().addAll((Collection<? extends FurnaceBuild>)newValue);
				return;
			case ModelPackage.STUDY__FILES:
				getFiles().clear();
				getFiles().addAll((Collection<? extends DataFile>)newValue);
				return;
			case ModelPackage.STUDY__SETTINGS:
				getSettings().clear();
				getSettings().addAll((Collection<? extends Setting>)newValue);
				return;
			case ModelPackage.STUDY__MAPPINGS:
				getMappings().clear();
				getMappings().addAll((Collection<? extends ImportMapping>)newValue);
				return;
			case ModelPackage.STUDY__HAZARDS:
				getHazards().clear();
				getHazards().addAll((Collection<? extends Hazard>)newValue);
				return;
			case ModelPackage.STUDY__PERMISSIONS:
				getPermissions().clear();
				getPermissions().addAll((Collection<? extends Permission>)newValue);
				return;
			case ModelPackage.STUDY__SITES:
				getSites().clear();
				getSites().addAll((Collection<? extends Site>)newValue);
				return;
			case ModelPackage.STUDY__SERIES:
				getSeries().clear();
				getSeries().addAll((Collection<? extends Series>)newValue);
				return;
			case ModelPackage.STUDY__BLIND_RECORDINGS:
				getBlindRecordings().clear();
				getBlindRecordings().addAll((Collection<? extends BlindRecording>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case ModelPackage.STUDY__FORMAT:
				setFormat(FORMAT_EDEFAULT);
				return;
			case ModelPackage.STUDY__QUESTION:
				setQuestion(QUESTION_EDEFAULT);
				return;
			case ModelPackage.STUDY__LANGUAGE:
				setLanguage(LANGUAGE_EDEFAULT);
				return;
			case ModelPackage.STUDY__LICENCE:
				setLicence(LICENCE_EDEFAULT);
				return;
			case ModelPackage.STUDY__CREATED_ON:
				setCreatedOn(CREATED_ON_EDEFAULT);
				return;
			case ModelPackage.STUDY__PEOPLE:
				getPeople().clear();
				return;
			case ModelPackage.STUDY__CITATIONS:
				getCitations().clear();
				return;
			case ModelPackage.STUDY__VARIABLES:
				getVariables().clear();
				return;
			case ModelPackage.STUDY__RESIDUE_CLASSES:
				getResidueClasses().clear();
				return;
			case ModelPackage.STUDY__LOTS:
				getLots().clear();
				return;
			case ModelPackage.STUDY__RECONSTRUCTIONS:
				getReconstructions().clear();
				return;
			case ModelPackage.STUDY__BUILDS:
				getBuilds().clear();
				return;
			case ModelPackage.STUDY__FILES:
				getFiles().clear();
				return;
			case ModelPackage.STUDY__SETTINGS:
				getSettings().clear();
				return;
			case ModelPackage.STUDY__MAPPINGS:
				getMappings().clear();
				return;
			case ModelPackage.STUDY__HAZARDS:
				getHazards().clear();
				return;
			case ModelPackage.STUDY__PERMISSIONS:
				getPermissions().clear();
				return;
			case ModelPackage.STUDY__SITES:
				getSites().clear();
				return;
			case ModelPackage.STUDY__SERIES:
				getSeries().clear();
				return;
			case ModelPackage.STUDY__BLIND_RECORDINGS:
				getBlindRecordings().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case ModelPackage.STUDY__FORMAT:
				return format != FORMAT_EDEFAULT;
			case ModelPackage.STUDY__QUESTION:
				return QUESTION_EDEFAULT == null ? question != null : !QUESTION_EDEFAULT.equals(question);
			case ModelPackage.STUDY__LANGUAGE:
				return LANGUAGE_EDEFAULT == null ? language != null : !LANGUAGE_EDEFAULT.equals(language);
			case ModelPackage.STUDY__LICENCE:
				return LICENCE_EDEFAULT == null ? licence != null : !LICENCE_EDEFAULT.equals(licence);
			case ModelPackage.STUDY__CREATED_ON:
				return CREATED_ON_EDEFAULT == null ? createdOn != null : !CREATED_ON_EDEFAULT.equals(createdOn);
			case ModelPackage.STUDY__PEOPLE:
				return people != null && !people.isEmpty();
			case ModelPackage.STUDY__CITATIONS:
				return citations != null && !citations.isEmpty();
			case ModelPackage.STUDY__VARIABLES:
				return variables != null && !variables.isEmpty();
			case ModelPackage.STUDY__RESIDUE_CLASSES:
				return residueClasses != null && !residueClasses.isEmpty();
			case ModelPackage.STUDY__LOTS:
				return lots != null && !lots.isEmpty();
			case ModelPackage.STUDY__RECONSTRUCTIONS:
				return reconstructions != null && !reconstructions.isEmpty();
			case ModelPackage.STUDY__BUILDS:
				return builds != null && !builds.isEmpty();
			case ModelPackage.STUDY__FILES:
				return files != null && !files.isEmpty();
			case ModelPackage.STUDY__SETTINGS:
				return settings != null && !settings.isEmpty();
			case ModelPackage.STUDY__MAPPINGS:
				return mappings != null && !mappings.isEmpty();
			case ModelPackage.STUDY__HAZARDS:
				return hazards != null && !hazards.isEmpty();
			case ModelPackage.STUDY__PERMISSIONS:
				return permissions != null && !permissions.isEmpty();
			case ModelPackage.STUDY__SITES:
				return sites != null && !sites.isEmpty();
			case ModelPackage.STUDY__SERIES:
				return series != null && !series.isEmpty();
			case ModelPackage.STUDY__BLIND_RECORDINGS:
				return blindRecordings != null && !blindRecordings.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (format: ");
		result.append(format);
		result.append(", question: ");
		result.append(question);
		result.append(", language: ");
		result.append(language);
		result.append(", licence: ");
		result.append(licence);
		result.append(", createdOn: ");
		result.append(createdOn);
		result.append(')');
		return result.toString();
	}

} //StudyImpl

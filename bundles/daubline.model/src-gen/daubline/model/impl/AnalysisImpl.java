/**
 */
package daubline.model.impl;

import daubline.base.IronBasis;
import daubline.base.Material;

import daubline.model.Analysis;
import daubline.model.Citation;
import daubline.model.Component;
import daubline.model.DataFile;
import daubline.model.ModelPackage;
import daubline.model.Sample;

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
 * An implementation of the model object '<em><b>Analysis</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getSample <em>Sample</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getSpecimen <em>Specimen</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getStandards <em>Standards</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getConditions <em>Conditions</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getAccuracy <em>Accuracy</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getLaboratory <em>Laboratory</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getOn <em>On</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getAreas <em>Areas</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getIronBasis <em>Iron Basis</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getReplicate <em>Replicate</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getTotalTyped <em>Total Typed</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getTotal <em>Total</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getCitation <em>Citation</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getPage <em>Page</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getFile <em>File</em>}</li>
 *   <li>{@link daubline.model.impl.AnalysisImpl#getComponents <em>Components</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AnalysisImpl extends NamedImpl implements Analysis {
	/**
	 * The cached value of the '{@link #getSample() <em>Sample</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSample()
	 * @generated
	 * @ordered
	 */
	protected Sample sample;

	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final Material MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected Material material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpecimen() <em>Specimen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecimen()
	 * @generated
	 * @ordered
	 */
	protected static final String SPECIMEN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSpecimen() <em>Specimen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpecimen()
	 * @generated
	 * @ordered
	 */
	protected String specimen = SPECIMEN_EDEFAULT;

	/**
	 * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected static final String METHOD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected String method = METHOD_EDEFAULT;

	/**
	 * The default value of the '{@link #getInstrument() <em>Instrument</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstrument()
	 * @generated
	 * @ordered
	 */
	protected static final String INSTRUMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstrument() <em>Instrument</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstrument()
	 * @generated
	 * @ordered
	 */
	protected String instrument = INSTRUMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getStandards() <em>Standards</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStandards()
	 * @generated
	 * @ordered
	 */
	protected static final String STANDARDS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStandards() <em>Standards</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStandards()
	 * @generated
	 * @ordered
	 */
	protected String standards = STANDARDS_EDEFAULT;

	/**
	 * The default value of the '{@link #getConditions() <em>Conditions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditions()
	 * @generated
	 * @ordered
	 */
	protected static final String CONDITIONS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConditions() <em>Conditions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConditions()
	 * @generated
	 * @ordered
	 */
	protected String conditions = CONDITIONS_EDEFAULT;

	/**
	 * The default value of the '{@link #getAccuracy() <em>Accuracy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccuracy()
	 * @generated
	 * @ordered
	 */
	protected static final String ACCURACY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAccuracy() <em>Accuracy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccuracy()
	 * @generated
	 * @ordered
	 */
	protected String accuracy = ACCURACY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLaboratory() <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaboratory()
	 * @generated
	 * @ordered
	 */
	protected static final String LABORATORY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLaboratory() <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLaboratory()
	 * @generated
	 * @ordered
	 */
	protected String laboratory = LABORATORY_EDEFAULT;

	/**
	 * The default value of the '{@link #getOn() <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected static final String ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOn() <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOn()
	 * @generated
	 * @ordered
	 */
	protected String on = ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getAreas() <em>Areas</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAreas()
	 * @generated
	 * @ordered
	 */
	protected static final Integer AREAS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAreas() <em>Areas</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAreas()
	 * @generated
	 * @ordered
	 */
	protected Integer areas = AREAS_EDEFAULT;

	/**
	 * The default value of the '{@link #getIronBasis() <em>Iron Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIronBasis()
	 * @generated
	 * @ordered
	 */
	protected static final IronBasis IRON_BASIS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIronBasis() <em>Iron Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIronBasis()
	 * @generated
	 * @ordered
	 */
	protected IronBasis ironBasis = IRON_BASIS_EDEFAULT;

	/**
	 * The default value of the '{@link #getReplicate() <em>Replicate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReplicate()
	 * @generated
	 * @ordered
	 */
	protected static final String REPLICATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReplicate() <em>Replicate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReplicate()
	 * @generated
	 * @ordered
	 */
	protected String replicate = REPLICATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTotalTyped() <em>Total Typed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTotalTyped()
	 * @generated
	 * @ordered
	 */
	protected static final String TOTAL_TYPED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTotalTyped() <em>Total Typed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTotalTyped()
	 * @generated
	 * @ordered
	 */
	protected String totalTyped = TOTAL_TYPED_EDEFAULT;

	/**
	 * The default value of the '{@link #getTotal() <em>Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTotal()
	 * @generated
	 * @ordered
	 */
	protected static final Double TOTAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTotal() <em>Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTotal()
	 * @generated
	 * @ordered
	 */
	protected Double total = TOTAL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCitation() <em>Citation</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCitation()
	 * @generated
	 * @ordered
	 */
	protected Citation citation;

	/**
	 * The default value of the '{@link #getPage() <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPage()
	 * @generated
	 * @ordered
	 */
	protected static final String PAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPage() <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPage()
	 * @generated
	 * @ordered
	 */
	protected String page = PAGE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFile() <em>File</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFile()
	 * @generated
	 * @ordered
	 */
	protected DataFile file;

	/**
	 * The cached value of the '{@link #getComponents() <em>Components</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getComponents()
	 * @generated
	 * @ordered
	 */
	protected EList<Component> components;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AnalysisImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.ANALYSIS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Sample getSample() {
		if (sample != null && sample.eIsProxy()) {
			InternalEObject oldSample = (InternalEObject)sample;
			sample = (Sample)eResolveProxy(oldSample);
			if (sample != oldSample) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.ANALYSIS__SAMPLE, oldSample, sample));
			}
		}
		return sample;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Sample basicGetSample() {
		return sample;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSample(Sample newSample) {
		Sample oldSample = sample;
		sample = newSample;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__SAMPLE, oldSample, sample));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Material getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(Material newMaterial) {
		Material oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSpecimen() {
		return specimen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpecimen(String newSpecimen) {
		String oldSpecimen = specimen;
		specimen = newSpecimen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__SPECIMEN, oldSpecimen, specimen));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMethod() {
		return method;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMethod(String newMethod) {
		String oldMethod = method;
		method = newMethod;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__METHOD, oldMethod, method));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInstrument() {
		return instrument;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstrument(String newInstrument) {
		String oldInstrument = instrument;
		instrument = newInstrument;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__INSTRUMENT, oldInstrument, instrument));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStandards() {
		return standards;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStandards(String newStandards) {
		String oldStandards = standards;
		standards = newStandards;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__STANDARDS, oldStandards, standards));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getConditions() {
		return conditions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConditions(String newConditions) {
		String oldConditions = conditions;
		conditions = newConditions;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__CONDITIONS, oldConditions, conditions));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAccuracy() {
		return accuracy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccuracy(String newAccuracy) {
		String oldAccuracy = accuracy;
		accuracy = newAccuracy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__ACCURACY, oldAccuracy, accuracy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLaboratory() {
		return laboratory;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLaboratory(String newLaboratory) {
		String oldLaboratory = laboratory;
		laboratory = newLaboratory;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__LABORATORY, oldLaboratory, laboratory));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOn() {
		return on;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOn(String newOn) {
		String oldOn = on;
		on = newOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__ON, oldOn, on));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getAreas() {
		return areas;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAreas(Integer newAreas) {
		Integer oldAreas = areas;
		areas = newAreas;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__AREAS, oldAreas, areas));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public IronBasis getIronBasis() {
		return ironBasis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIronBasis(IronBasis newIronBasis) {
		IronBasis oldIronBasis = ironBasis;
		ironBasis = newIronBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__IRON_BASIS, oldIronBasis, ironBasis));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReplicate() {
		return replicate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReplicate(String newReplicate) {
		String oldReplicate = replicate;
		replicate = newReplicate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__REPLICATE, oldReplicate, replicate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTotalTyped() {
		return totalTyped;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTotalTyped(String newTotalTyped) {
		String oldTotalTyped = totalTyped;
		totalTyped = newTotalTyped;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__TOTAL_TYPED, oldTotalTyped, totalTyped));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTotal() {
		return total;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTotal(Double newTotal) {
		Double oldTotal = total;
		total = newTotal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__TOTAL, oldTotal, total));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Citation getCitation() {
		if (citation != null && citation.eIsProxy()) {
			InternalEObject oldCitation = (InternalEObject)citation;
			citation = (Citation)eResolveProxy(oldCitation);
			if (citation != oldCitation) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.ANALYSIS__CITATION, oldCitation, citation));
			}
		}
		return citation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Citation basicGetCitation() {
		return citation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCitation(Citation newCitation) {
		Citation oldCitation = citation;
		citation = newCitation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__CITATION, oldCitation, citation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPage() {
		return page;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPage(String newPage) {
		String oldPage = page;
		page = newPage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__PAGE, oldPage, page));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DataFile getFile() {
		if (file != null && file.eIsProxy()) {
			InternalEObject oldFile = (InternalEObject)file;
			file = (DataFile)eResolveProxy(oldFile);
			if (file != oldFile) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.ANALYSIS__FILE, oldFile, file));
			}
		}
		return file;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DataFile basicGetFile() {
		return file;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFile(DataFile newFile) {
		DataFile oldFile = file;
		file = newFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.ANALYSIS__FILE, oldFile, file));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Component> getComponents() {
		if (components == null) {
			components = new EObjectContainmentEList<Component>(Component.class, this, ModelPackage.ANALYSIS__COMPONENTS);
		}
		return components;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.ANALYSIS__COMPONENTS:
				return ((InternalEList<?>)getComponents()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.ANALYSIS__SAMPLE:
				if (resolve) return getSample();
				return basicGetSample();
			case ModelPackage.ANALYSIS__MATERIAL:
				return getMaterial();
			case ModelPackage.ANALYSIS__SPECIMEN:
				return getSpecimen();
			case ModelPackage.ANALYSIS__METHOD:
				return getMethod();
			case ModelPackage.ANALYSIS__INSTRUMENT:
				return getInstrument();
			case ModelPackage.ANALYSIS__STANDARDS:
				return getStandards();
			case ModelPackage.ANALYSIS__CONDITIONS:
				return getConditions();
			case ModelPackage.ANALYSIS__ACCURACY:
				return getAccuracy();
			case ModelPackage.ANALYSIS__LABORATORY:
				return getLaboratory();
			case ModelPackage.ANALYSIS__ON:
				return getOn();
			case ModelPackage.ANALYSIS__AREAS:
				return getAreas();
			case ModelPackage.ANALYSIS__IRON_BASIS:
				return getIronBasis();
			case ModelPackage.ANALYSIS__REPLICATE:
				return getReplicate();
			case ModelPackage.ANALYSIS__TOTAL_TYPED:
				return getTotalTyped();
			case ModelPackage.ANALYSIS__TOTAL:
				return getTotal();
			case ModelPackage.ANALYSIS__CITATION:
				if (resolve) return getCitation();
				return basicGetCitation();
			case ModelPackage.ANALYSIS__PAGE:
				return getPage();
			case ModelPackage.ANALYSIS__FILE:
				if (resolve) return getFile();
				return basicGetFile();
			case ModelPackage.ANALYSIS__COMPONENTS:
				return getComponents();
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
			case ModelPackage.ANALYSIS__SAMPLE:
				setSample((Sample)newValue);
				return;
			case ModelPackage.ANALYSIS__MATERIAL:
				setMaterial((Material)newValue);
				return;
			case ModelPackage.ANALYSIS__SPECIMEN:
				setSpecimen((String)newValue);
				return;
			case ModelPackage.ANALYSIS__METHOD:
				setMethod((String)newValue);
				return;
			case ModelPackage.ANALYSIS__INSTRUMENT:
				setInstrument((String)newValue);
				return;
			case ModelPackage.ANALYSIS__STANDARDS:
				setStandards((String)newValue);
				return;
			case ModelPackage.ANALYSIS__CONDITIONS:
				setConditions((String)newValue);
				return;
			case ModelPackage.ANALYSIS__ACCURACY:
				setAccuracy((String)newValue);
				return;
			case ModelPackage.ANALYSIS__LABORATORY:
				setLaboratory((String)newValue);
				return;
			case ModelPackage.ANALYSIS__ON:
				setOn((String)newValue);
				return;
			case ModelPackage.ANALYSIS__AREAS:
				setAreas((Integer)newValue);
				return;
			case ModelPackage.ANALYSIS__IRON_BASIS:
				setIronBasis((IronBasis)newValue);
				return;
			case ModelPackage.ANALYSIS__REPLICATE:
				setReplicate((String)newValue);
				return;
			case ModelPackage.ANALYSIS__TOTAL_TYPED:
				setTotalTyped((String)newValue);
				return;
			case ModelPackage.ANALYSIS__TOTAL:
				setTotal((Double)newValue);
				return;
			case ModelPackage.ANALYSIS__CITATION:
				setCitation((Citation)newValue);
				return;
			case ModelPackage.ANALYSIS__PAGE:
				setPage((String)newValue);
				return;
			case ModelPackage.ANALYSIS__FILE:
				setFile((DataFile)newValue);
				return;
			case ModelPackage.ANALYSIS__COMPONENTS:
				getComponents().clear();
				getComponents().addAll((Collection<? extends Component>)newValue);
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
			case ModelPackage.ANALYSIS__SAMPLE:
				setSample((Sample)null);
				return;
			case ModelPackage.ANALYSIS__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__SPECIMEN:
				setSpecimen(SPECIMEN_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__METHOD:
				setMethod(METHOD_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__INSTRUMENT:
				setInstrument(INSTRUMENT_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__STANDARDS:
				setStandards(STANDARDS_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__CONDITIONS:
				setConditions(CONDITIONS_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__ACCURACY:
				setAccuracy(ACCURACY_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__LABORATORY:
				setLaboratory(LABORATORY_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__ON:
				setOn(ON_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__AREAS:
				setAreas(AREAS_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__IRON_BASIS:
				setIronBasis(IRON_BASIS_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__REPLICATE:
				setReplicate(REPLICATE_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__TOTAL_TYPED:
				setTotalTyped(TOTAL_TYPED_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__TOTAL:
				setTotal(TOTAL_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__CITATION:
				setCitation((Citation)null);
				return;
			case ModelPackage.ANALYSIS__PAGE:
				setPage(PAGE_EDEFAULT);
				return;
			case ModelPackage.ANALYSIS__FILE:
				setFile((DataFile)null);
				return;
			case ModelPackage.ANALYSIS__COMPONENTS:
				getComponents().clear();
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
			case ModelPackage.ANALYSIS__SAMPLE:
				return sample != null;
			case ModelPackage.ANALYSIS__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case ModelPackage.ANALYSIS__SPECIMEN:
				return SPECIMEN_EDEFAULT == null ? specimen != null : !SPECIMEN_EDEFAULT.equals(specimen);
			case ModelPackage.ANALYSIS__METHOD:
				return METHOD_EDEFAULT == null ? method != null : !METHOD_EDEFAULT.equals(method);
			case ModelPackage.ANALYSIS__INSTRUMENT:
				return INSTRUMENT_EDEFAULT == null ? instrument != null : !INSTRUMENT_EDEFAULT.equals(instrument);
			case ModelPackage.ANALYSIS__STANDARDS:
				return STANDARDS_EDEFAULT == null ? standards != null : !STANDARDS_EDEFAULT.equals(standards);
			case ModelPackage.ANALYSIS__CONDITIONS:
				return CONDITIONS_EDEFAULT == null ? conditions != null : !CONDITIONS_EDEFAULT.equals(conditions);
			case ModelPackage.ANALYSIS__ACCURACY:
				return ACCURACY_EDEFAULT == null ? accuracy != null : !ACCURACY_EDEFAULT.equals(accuracy);
			case ModelPackage.ANALYSIS__LABORATORY:
				return LABORATORY_EDEFAULT == null ? laboratory != null : !LABORATORY_EDEFAULT.equals(laboratory);
			case ModelPackage.ANALYSIS__ON:
				return ON_EDEFAULT == null ? on != null : !ON_EDEFAULT.equals(on);
			case ModelPackage.ANALYSIS__AREAS:
				return AREAS_EDEFAULT == null ? areas != null : !AREAS_EDEFAULT.equals(areas);
			case ModelPackage.ANALYSIS__IRON_BASIS:
				return IRON_BASIS_EDEFAULT == null ? ironBasis != null : !IRON_BASIS_EDEFAULT.equals(ironBasis);
			case ModelPackage.ANALYSIS__REPLICATE:
				return REPLICATE_EDEFAULT == null ? replicate != null : !REPLICATE_EDEFAULT.equals(replicate);
			case ModelPackage.ANALYSIS__TOTAL_TYPED:
				return TOTAL_TYPED_EDEFAULT == null ? totalTyped != null : !TOTAL_TYPED_EDEFAULT.equals(totalTyped);
			case ModelPackage.ANALYSIS__TOTAL:
				return TOTAL_EDEFAULT == null ? total != null : !TOTAL_EDEFAULT.equals(total);
			case ModelPackage.ANALYSIS__CITATION:
				return citation != null;
			case ModelPackage.ANALYSIS__PAGE:
				return PAGE_EDEFAULT == null ? page != null : !PAGE_EDEFAULT.equals(page);
			case ModelPackage.ANALYSIS__FILE:
				return file != null;
			case ModelPackage.ANALYSIS__COMPONENTS:
				return components != null && !components.isEmpty();
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
		result.append(" (material: ");
		result.append(material);
		result.append(", specimen: ");
		result.append(specimen);
		result.append(", method: ");
		result.append(method);
		result.append(", instrument: ");
		result.append(instrument);
		result.append(", standards: ");
		result.append(standards);
		result.append(", conditions: ");
		result.append(conditions);
		result.append(", accuracy: ");
		result.append(accuracy);
		result.append(", laboratory: ");
		result.append(laboratory);
		result.append(", on: ");
		result.append(on);
		result.append(", areas: ");
		result.append(areas);
		result.append(", ironBasis: ");
		result.append(ironBasis);
		result.append(", replicate: ");
		result.append(replicate);
		result.append(", totalTyped: ");
		result.append(totalTyped);
		result.append(", total: ");
		result.append(total);
		result.append(", page: ");
		result.append(page);
		result.append(')');
		return result.toString();
	}

} //AnalysisImpl

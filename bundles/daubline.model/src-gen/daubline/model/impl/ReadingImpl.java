/**
 */
package daubline.model.impl;

import daubline.base.Confidence;
import daubline.base.HowGot;
import daubline.base.ValueKind;

import daubline.model.Citation;
import daubline.model.Earlier;
import daubline.model.ModelPackage;
import daubline.model.Person;
import daubline.model.Reading;

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
 * An implementation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ReadingImpl#getVariable <em>Variable</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getTyped <em>Typed</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getValue <em>Value</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getLow <em>Low</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getHigh <em>High</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getSigma <em>Sigma</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getCategory <em>Category</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getHow <em>How</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getAt <em>At</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getCitation <em>Citation</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getPage <em>Page</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getVerbatim <em>Verbatim</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getConfidence <em>Confidence</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getSamplingFraction <em>Sampling Fraction</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#isPicked <em>Picked</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getPickedBecause <em>Picked Because</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getNote <em>Note</em>}</li>
 *   <li>{@link daubline.model.impl.ReadingImpl#getEarlier <em>Earlier</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReadingImpl extends IdentifiedImpl implements Reading {
	/**
	 * The default value of the '{@link #getVariable() <em>Variable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariable()
	 * @generated
	 * @ordered
	 */
	protected static final String VARIABLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVariable() <em>Variable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVariable()
	 * @generated
	 * @ordered
	 */
	protected String variable = VARIABLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final ValueKind KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected ValueKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getTyped() <em>Typed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTyped()
	 * @generated
	 * @ordered
	 */
	protected static final String TYPED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTyped() <em>Typed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTyped()
	 * @generated
	 * @ordered
	 */
	protected String typed = TYPED_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected String unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected static final Double VALUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValue() <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValue()
	 * @generated
	 * @ordered
	 */
	protected Double value = VALUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected static final Double LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLow() <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLow()
	 * @generated
	 * @ordered
	 */
	protected Double low = LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected static final Double HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHigh() <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHigh()
	 * @generated
	 * @ordered
	 */
	protected Double high = HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSigma() <em>Sigma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSigma()
	 * @generated
	 * @ordered
	 */
	protected static final Double SIGMA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSigma() <em>Sigma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSigma()
	 * @generated
	 * @ordered
	 */
	protected Double sigma = SIGMA_EDEFAULT;

	/**
	 * The default value of the '{@link #getCategory() <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCategory()
	 * @generated
	 * @ordered
	 */
	protected static final String CATEGORY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCategory() <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCategory()
	 * @generated
	 * @ordered
	 */
	protected String category = CATEGORY_EDEFAULT;

	/**
	 * The default value of the '{@link #getHow() <em>How</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHow()
	 * @generated
	 * @ordered
	 */
	protected static final HowGot HOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHow() <em>How</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHow()
	 * @generated
	 * @ordered
	 */
	protected HowGot how = HOW_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBy() <em>By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBy()
	 * @generated
	 * @ordered
	 */
	protected Person by;

	/**
	 * The default value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected static final String AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAt() <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAt()
	 * @generated
	 * @ordered
	 */
	protected String at = AT_EDEFAULT;

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
	 * The default value of the '{@link #getVerbatim() <em>Verbatim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerbatim()
	 * @generated
	 * @ordered
	 */
	protected static final String VERBATIM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVerbatim() <em>Verbatim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerbatim()
	 * @generated
	 * @ordered
	 */
	protected String verbatim = VERBATIM_EDEFAULT;

	/**
	 * The default value of the '{@link #getConfidence() <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfidence()
	 * @generated
	 * @ordered
	 */
	protected static final Confidence CONFIDENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getConfidence() <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getConfidence()
	 * @generated
	 * @ordered
	 */
	protected Confidence confidence = CONFIDENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSamplingFraction() <em>Sampling Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamplingFraction()
	 * @generated
	 * @ordered
	 */
	protected static final Double SAMPLING_FRACTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSamplingFraction() <em>Sampling Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamplingFraction()
	 * @generated
	 * @ordered
	 */
	protected Double samplingFraction = SAMPLING_FRACTION_EDEFAULT;

	/**
	 * The default value of the '{@link #isPicked() <em>Picked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPicked()
	 * @generated
	 * @ordered
	 */
	protected static final boolean PICKED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isPicked() <em>Picked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isPicked()
	 * @generated
	 * @ordered
	 */
	protected boolean picked = PICKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getPickedBecause() <em>Picked Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickedBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String PICKED_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPickedBecause() <em>Picked Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPickedBecause()
	 * @generated
	 * @ordered
	 */
	protected String pickedBecause = PICKED_BECAUSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getEarlier() <em>Earlier</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEarlier()
	 * @generated
	 * @ordered
	 */
	protected EList<Earlier> earlier;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReadingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.READING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVariable() {
		return variable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVariable(String newVariable) {
		String oldVariable = variable;
		variable = newVariable;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__VARIABLE, oldVariable, variable));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ValueKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(ValueKind newKind) {
		ValueKind oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTyped() {
		return typed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTyped(String newTyped) {
		String oldTyped = typed;
		typed = newTyped;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__TYPED, oldTyped, typed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit) {
		String oldUnit = unit;
		unit = newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getValue() {
		return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Double newValue) {
		Double oldValue = value;
		value = newValue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__VALUE, oldValue, value));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLow() {
		return low;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLow(Double newLow) {
		Double oldLow = low;
		low = newLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__LOW, oldLow, low));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHigh() {
		return high;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHigh(Double newHigh) {
		Double oldHigh = high;
		high = newHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__HIGH, oldHigh, high));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSigma() {
		return sigma;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSigma(Double newSigma) {
		Double oldSigma = sigma;
		sigma = newSigma;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__SIGMA, oldSigma, sigma));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCategory() {
		return category;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCategory(String newCategory) {
		String oldCategory = category;
		category = newCategory;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__CATEGORY, oldCategory, category));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public HowGot getHow() {
		return how;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHow(HowGot newHow) {
		HowGot oldHow = how;
		how = newHow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__HOW, oldHow, how));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person getBy() {
		if (by != null && by.eIsProxy()) {
			InternalEObject oldBy = (InternalEObject)by;
			by = (Person)eResolveProxy(oldBy);
			if (by != oldBy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.READING__BY, oldBy, by));
			}
		}
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Person basicGetBy() {
		return by;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBy(Person newBy) {
		Person oldBy = by;
		by = newBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAt() {
		return at;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAt(String newAt) {
		String oldAt = at;
		at = newAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__AT, oldAt, at));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.READING__CITATION, oldCitation, citation));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__CITATION, oldCitation, citation));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__PAGE, oldPage, page));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVerbatim() {
		return verbatim;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVerbatim(String newVerbatim) {
		String oldVerbatim = verbatim;
		verbatim = newVerbatim;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__VERBATIM, oldVerbatim, verbatim));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Confidence getConfidence() {
		return confidence;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConfidence(Confidence newConfidence) {
		Confidence oldConfidence = confidence;
		confidence = newConfidence;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__CONFIDENCE, oldConfidence, confidence));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSamplingFraction() {
		return samplingFraction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSamplingFraction(Double newSamplingFraction) {
		Double oldSamplingFraction = samplingFraction;
		samplingFraction = newSamplingFraction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__SAMPLING_FRACTION, oldSamplingFraction, samplingFraction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isPicked() {
		return picked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPicked(boolean newPicked) {
		boolean oldPicked = picked;
		picked = newPicked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__PICKED, oldPicked, picked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPickedBecause() {
		return pickedBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPickedBecause(String newPickedBecause) {
		String oldPickedBecause = pickedBecause;
		pickedBecause = newPickedBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__PICKED_BECAUSE, oldPickedBecause, pickedBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.READING__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Earlier> getEarlier() {
		if (earlier == null) {
			earlier = new EObjectContainmentEList<Earlier>(Earlier.class, this, ModelPackage.READING__EARLIER);
		}
		return earlier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.READING__EARLIER:
				return ((InternalEList<?>)getEarlier()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.READING__VARIABLE:
				return getVariable();
			case ModelPackage.READING__KIND:
				return getKind();
			case ModelPackage.READING__TYPED:
				return getTyped();
			case ModelPackage.READING__UNIT:
				return getUnit();
			case ModelPackage.READING__VALUE:
				return getValue();
			case ModelPackage.READING__LOW:
				return getLow();
			case ModelPackage.READING__HIGH:
				return getHigh();
			case ModelPackage.READING__SIGMA:
				return getSigma();
			case ModelPackage.READING__CATEGORY:
				return getCategory();
			case ModelPackage.READING__HOW:
				return getHow();
			case ModelPackage.READING__BY:
				if (resolve) return getBy();
				return basicGetBy();
			case ModelPackage.READING__AT:
				return getAt();
			case ModelPackage.READING__CITATION:
				if (resolve) return getCitation();
				return basicGetCitation();
			case ModelPackage.READING__PAGE:
				return getPage();
			case ModelPackage.READING__VERBATIM:
				return getVerbatim();
			case ModelPackage.READING__CONFIDENCE:
				return getConfidence();
			case ModelPackage.READING__SAMPLING_FRACTION:
				return getSamplingFraction();
			case ModelPackage.READING__PICKED:
				return isPicked();
			case ModelPackage.READING__PICKED_BECAUSE:
				return getPickedBecause();
			case ModelPackage.READING__NOTE:
				return getNote();
			case ModelPackage.READING__EARLIER:
				return getEarlier();
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
			case ModelPackage.READING__VARIABLE:
				setVariable((String)newValue);
				return;
			case ModelPackage.READING__KIND:
				setKind((ValueKind)newValue);
				return;
			case ModelPackage.READING__TYPED:
				setTyped((String)newValue);
				return;
			case ModelPackage.READING__UNIT:
				setUnit((String)newValue);
				return;
			case ModelPackage.READING__VALUE:
				setValue((Double)newValue);
				return;
			case ModelPackage.READING__LOW:
				setLow((Double)newValue);
				return;
			case ModelPackage.READING__HIGH:
				setHigh((Double)newValue);
				return;
			case ModelPackage.READING__SIGMA:
				setSigma((Double)newValue);
				return;
			case ModelPackage.READING__CATEGORY:
				setCategory((String)newValue);
				return;
			case ModelPackage.READING__HOW:
				setHow((HowGot)newValue);
				return;
			case ModelPackage.READING__BY:
				setBy((Person)newValue);
				return;
			case ModelPackage.READING__AT:
				setAt((String)newValue);
				return;
			case ModelPackage.READING__CITATION:
				setCitation((Citation)newValue);
				return;
			case ModelPackage.READING__PAGE:
				setPage((String)newValue);
				return;
			case ModelPackage.READING__VERBATIM:
				setVerbatim((String)newValue);
				return;
			case ModelPackage.READING__CONFIDENCE:
				setConfidence((Confidence)newValue);
				return;
			case ModelPackage.READING__SAMPLING_FRACTION:
				setSamplingFraction((Double)newValue);
				return;
			case ModelPackage.READING__PICKED:
				setPicked((Boolean)newValue);
				return;
			case ModelPackage.READING__PICKED_BECAUSE:
				setPickedBecause((String)newValue);
				return;
			case ModelPackage.READING__NOTE:
				setNote((String)newValue);
				return;
			case ModelPackage.READING__EARLIER:
				getEarlier().clear();
				getEarlier().addAll((Collection<? extends Earlier>)newValue);
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
			case ModelPackage.READING__VARIABLE:
				setVariable(VARIABLE_EDEFAULT);
				return;
			case ModelPackage.READING__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.READING__TYPED:
				setTyped(TYPED_EDEFAULT);
				return;
			case ModelPackage.READING__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case ModelPackage.READING__VALUE:
				setValue(VALUE_EDEFAULT);
				return;
			case ModelPackage.READING__LOW:
				setLow(LOW_EDEFAULT);
				return;
			case ModelPackage.READING__HIGH:
				setHigh(HIGH_EDEFAULT);
				return;
			case ModelPackage.READING__SIGMA:
				setSigma(SIGMA_EDEFAULT);
				return;
			case ModelPackage.READING__CATEGORY:
				setCategory(CATEGORY_EDEFAULT);
				return;
			case ModelPackage.READING__HOW:
				setHow(HOW_EDEFAULT);
				return;
			case ModelPackage.READING__BY:
				setBy((Person)null);
				return;
			case ModelPackage.READING__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.READING__CITATION:
				setCitation((Citation)null);
				return;
			case ModelPackage.READING__PAGE:
				setPage(PAGE_EDEFAULT);
				return;
			case ModelPackage.READING__VERBATIM:
				setVerbatim(VERBATIM_EDEFAULT);
				return;
			case ModelPackage.READING__CONFIDENCE:
				setConfidence(CONFIDENCE_EDEFAULT);
				return;
			case ModelPackage.READING__SAMPLING_FRACTION:
				setSamplingFraction(SAMPLING_FRACTION_EDEFAULT);
				return;
			case ModelPackage.READING__PICKED:
				setPicked(PICKED_EDEFAULT);
				return;
			case ModelPackage.READING__PICKED_BECAUSE:
				setPickedBecause(PICKED_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.READING__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case ModelPackage.READING__EARLIER:
				getEarlier().clear();
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
			case ModelPackage.READING__VARIABLE:
				return VARIABLE_EDEFAULT == null ? variable != null : !VARIABLE_EDEFAULT.equals(variable);
			case ModelPackage.READING__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.READING__TYPED:
				return TYPED_EDEFAULT == null ? typed != null : !TYPED_EDEFAULT.equals(typed);
			case ModelPackage.READING__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case ModelPackage.READING__VALUE:
				return VALUE_EDEFAULT == null ? value != null : !VALUE_EDEFAULT.equals(value);
			case ModelPackage.READING__LOW:
				return LOW_EDEFAULT == null ? low != null : !LOW_EDEFAULT.equals(low);
			case ModelPackage.READING__HIGH:
				return HIGH_EDEFAULT == null ? high != null : !HIGH_EDEFAULT.equals(high);
			case ModelPackage.READING__SIGMA:
				return SIGMA_EDEFAULT == null ? sigma != null : !SIGMA_EDEFAULT.equals(sigma);
			case ModelPackage.READING__CATEGORY:
				return CATEGORY_EDEFAULT == null ? category != null : !CATEGORY_EDEFAULT.equals(category);
			case ModelPackage.READING__HOW:
				return HOW_EDEFAULT == null ? how != null : !HOW_EDEFAULT.equals(how);
			case ModelPackage.READING__BY:
				return by != null;
			case ModelPackage.READING__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.READING__CITATION:
				return citation != null;
			case ModelPackage.READING__PAGE:
				return PAGE_EDEFAULT == null ? page != null : !PAGE_EDEFAULT.equals(page);
			case ModelPackage.READING__VERBATIM:
				return VERBATIM_EDEFAULT == null ? verbatim != null : !VERBATIM_EDEFAULT.equals(verbatim);
			case ModelPackage.READING__CONFIDENCE:
				return CONFIDENCE_EDEFAULT == null ? confidence != null : !CONFIDENCE_EDEFAULT.equals(confidence);
			case ModelPackage.READING__SAMPLING_FRACTION:
				return SAMPLING_FRACTION_EDEFAULT == null ? samplingFraction != null : !SAMPLING_FRACTION_EDEFAULT.equals(samplingFraction);
			case ModelPackage.READING__PICKED:
				return picked != PICKED_EDEFAULT;
			case ModelPackage.READING__PICKED_BECAUSE:
				return PICKED_BECAUSE_EDEFAULT == null ? pickedBecause != null : !PICKED_BECAUSE_EDEFAULT.equals(pickedBecause);
			case ModelPackage.READING__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case ModelPackage.READING__EARLIER:
				return earlier != null && !earlier.isEmpty();
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
		result.append(" (variable: ");
		result.append(variable);
		result.append(", kind: ");
		result.append(kind);
		result.append(", typed: ");
		result.append(typed);
		result.append(", unit: ");
		result.append(unit);
		result.append(", value: ");
		result.append(value);
		result.append(", low: ");
		result.append(low);
		result.append(", high: ");
		result.append(high);
		result.append(", sigma: ");
		result.append(sigma);
		result.append(", category: ");
		result.append(category);
		result.append(", how: ");
		result.append(how);
		result.append(", at: ");
		result.append(at);
		result.append(", page: ");
		result.append(page);
		result.append(", verbatim: ");
		result.append(verbatim);
		result.append(", confidence: ");
		result.append(confidence);
		result.append(", samplingFraction: ");
		result.append(samplingFraction);
		result.append(", picked: ");
		result.append(picked);
		result.append(", pickedBecause: ");
		result.append(pickedBecause);
		result.append(", note: ");
		result.append(note);
		result.append(')');
		return result.toString();
	}

} //ReadingImpl

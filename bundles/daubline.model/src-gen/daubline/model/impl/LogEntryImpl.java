/**
 */
package daubline.model.impl;

import daubline.model.DataFile;
import daubline.model.LogEntry;
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
 * An implementation of the model object '<em><b>Log Entry</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getAt <em>At</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getElapsed <em>Elapsed</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getText <em>Text</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#isAbout <em>About</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#isLate <em>Late</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#isInferred <em>Inferred</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getOriginal <em>Original</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getIllegible <em>Illegible</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getCheckedBy <em>Checked By</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getCheckedOn <em>Checked On</em>}</li>
 *   <li>{@link daubline.model.impl.LogEntryImpl#getScan <em>Scan</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LogEntryImpl extends IdentifiedImpl implements LogEntry {
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
	 * The default value of the '{@link #getElapsed() <em>Elapsed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElapsed()
	 * @generated
	 * @ordered
	 */
	protected static final Double ELAPSED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElapsed() <em>Elapsed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElapsed()
	 * @generated
	 * @ordered
	 */
	protected Double elapsed = ELAPSED_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final String KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected String kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected static final String TEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected String text = TEXT_EDEFAULT;

	/**
	 * The default value of the '{@link #isAbout() <em>About</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isAbout()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ABOUT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isAbout() <em>About</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isAbout()
	 * @generated
	 * @ordered
	 */
	protected boolean about = ABOUT_EDEFAULT;

	/**
	 * The default value of the '{@link #isLate() <em>Late</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLate()
	 * @generated
	 * @ordered
	 */
	protected static final boolean LATE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isLate() <em>Late</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLate()
	 * @generated
	 * @ordered
	 */
	protected boolean late = LATE_EDEFAULT;

	/**
	 * The default value of the '{@link #isInferred() <em>Inferred</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInferred()
	 * @generated
	 * @ordered
	 */
	protected static final boolean INFERRED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isInferred() <em>Inferred</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInferred()
	 * @generated
	 * @ordered
	 */
	protected boolean inferred = INFERRED_EDEFAULT;

	/**
	 * The default value of the '{@link #getOriginal() <em>Original</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginal()
	 * @generated
	 * @ordered
	 */
	protected static final String ORIGINAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOriginal() <em>Original</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginal()
	 * @generated
	 * @ordered
	 */
	protected String original = ORIGINAL_EDEFAULT;

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
	 * The cached value of the '{@link #getValues() <em>Values</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValues()
	 * @generated
	 * @ordered
	 */
	protected EList<Reading> values;

	/**
	 * The default value of the '{@link #getIllegible() <em>Illegible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIllegible()
	 * @generated
	 * @ordered
	 */
	protected static final String ILLEGIBLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIllegible() <em>Illegible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIllegible()
	 * @generated
	 * @ordered
	 */
	protected String illegible = ILLEGIBLE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCheckedBy() <em>Checked By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedBy()
	 * @generated
	 * @ordered
	 */
	protected Person checkedBy;

	/**
	 * The default value of the '{@link #getCheckedOn() <em>Checked On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedOn()
	 * @generated
	 * @ordered
	 */
	protected static final String CHECKED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCheckedOn() <em>Checked On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCheckedOn()
	 * @generated
	 * @ordered
	 */
	protected String checkedOn = CHECKED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getScan() <em>Scan</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScan()
	 * @generated
	 * @ordered
	 */
	protected DataFile scan;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LogEntryImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.LOG_ENTRY;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__AT, oldAt, at));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getElapsed() {
		return elapsed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElapsed(Double newElapsed) {
		Double oldElapsed = elapsed;
		elapsed = newElapsed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__ELAPSED, oldElapsed, elapsed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(String newKind) {
		String oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText() {
		return text;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setText(String newText) {
		String oldText = text;
		text = newText;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__TEXT, oldText, text));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isAbout() {
		return about;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAbout(boolean newAbout) {
		boolean oldAbout = about;
		about = newAbout;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__ABOUT, oldAbout, about));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLate() {
		return late;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLate(boolean newLate) {
		boolean oldLate = late;
		late = newLate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__LATE, oldLate, late));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isInferred() {
		return inferred;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInferred(boolean newInferred) {
		boolean oldInferred = inferred;
		inferred = newInferred;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__INFERRED, oldInferred, inferred));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOriginal() {
		return original;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOriginal(String newOriginal) {
		String oldOriginal = original;
		original = newOriginal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__ORIGINAL, oldOriginal, original));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.LOG_ENTRY__BY, oldBy, by));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reading> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<Reading>(Reading.class, this, ModelPackage.LOG_ENTRY__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getIllegible() {
		return illegible;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIllegible(String newIllegible) {
		String oldIllegible = illegible;
		illegible = newIllegible;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__ILLEGIBLE, oldIllegible, illegible));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person getCheckedBy() {
		if (checkedBy != null && checkedBy.eIsProxy()) {
			InternalEObject oldCheckedBy = (InternalEObject)checkedBy;
			checkedBy = (Person)eResolveProxy(oldCheckedBy);
			if (checkedBy != oldCheckedBy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.LOG_ENTRY__CHECKED_BY, oldCheckedBy, checkedBy));
			}
		}
		return checkedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Person basicGetCheckedBy() {
		return checkedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheckedBy(Person newCheckedBy) {
		Person oldCheckedBy = checkedBy;
		checkedBy = newCheckedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__CHECKED_BY, oldCheckedBy, checkedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCheckedOn() {
		return checkedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheckedOn(String newCheckedOn) {
		String oldCheckedOn = checkedOn;
		checkedOn = newCheckedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__CHECKED_ON, oldCheckedOn, checkedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DataFile getScan() {
		if (scan != null && scan.eIsProxy()) {
			InternalEObject oldScan = (InternalEObject)scan;
			scan = (DataFile)eResolveProxy(oldScan);
			if (scan != oldScan) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.LOG_ENTRY__SCAN, oldScan, scan));
			}
		}
		return scan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DataFile basicGetScan() {
		return scan;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScan(DataFile newScan) {
		DataFile oldScan = scan;
		scan = newScan;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LOG_ENTRY__SCAN, oldScan, scan));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.LOG_ENTRY__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.LOG_ENTRY__AT:
				return getAt();
			case ModelPackage.LOG_ENTRY__ELAPSED:
				return getElapsed();
			case ModelPackage.LOG_ENTRY__KIND:
				return getKind();
			case ModelPackage.LOG_ENTRY__TEXT:
				return getText();
			case ModelPackage.LOG_ENTRY__ABOUT:
				return isAbout();
			case ModelPackage.LOG_ENTRY__LATE:
				return isLate();
			case ModelPackage.LOG_ENTRY__INFERRED:
				return isInferred();
			case ModelPackage.LOG_ENTRY__ORIGINAL:
				return getOriginal();
			case ModelPackage.LOG_ENTRY__BY:
				if (resolve) return getBy();
				return basicGetBy();
			case ModelPackage.LOG_ENTRY__VALUES:
				return getValues();
			case ModelPackage.LOG_ENTRY__ILLEGIBLE:
				return getIllegible();
			case ModelPackage.LOG_ENTRY__CHECKED_BY:
				if (resolve) return getCheckedBy();
				return basicGetCheckedBy();
			case ModelPackage.LOG_ENTRY__CHECKED_ON:
				return getCheckedOn();
			case ModelPackage.LOG_ENTRY__SCAN:
				if (resolve) return getScan();
				return basicGetScan();
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
			case ModelPackage.LOG_ENTRY__AT:
				setAt((String)newValue);
				return;
			case ModelPackage.LOG_ENTRY__ELAPSED:
				setElapsed((Double)newValue);
				return;
			case ModelPackage.LOG_ENTRY__KIND:
				setKind((String)newValue);
				return;
			case ModelPackage.LOG_ENTRY__TEXT:
				setText((String)newValue);
				return;
			case ModelPackage.LOG_ENTRY__ABOUT:
				setAbout((Boolean)newValue);
				return;
			case ModelPackage.LOG_ENTRY__LATE:
				setLate((Boolean)newValue);
				return;
			case ModelPackage.LOG_ENTRY__INFERRED:
				setInferred((Boolean)newValue);
				return;
			case ModelPackage.LOG_ENTRY__ORIGINAL:
				setOriginal((String)newValue);
				return;
			case ModelPackage.LOG_ENTRY__BY:
				setBy((Person)newValue);
				return;
			case ModelPackage.LOG_ENTRY__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends Reading>)newValue);
				return;
			case ModelPackage.LOG_ENTRY__ILLEGIBLE:
				setIllegible((String)newValue);
				return;
			case ModelPackage.LOG_ENTRY__CHECKED_BY:
				setCheckedBy((Person)newValue);
				return;
			case ModelPackage.LOG_ENTRY__CHECKED_ON:
				setCheckedOn((String)newValue);
				return;
			case ModelPackage.LOG_ENTRY__SCAN:
				setScan((DataFile)newValue);
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
			case ModelPackage.LOG_ENTRY__AT:
				setAt(AT_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__ELAPSED:
				setElapsed(ELAPSED_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__TEXT:
				setText(TEXT_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__ABOUT:
				setAbout(ABOUT_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__LATE:
				setLate(LATE_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__INFERRED:
				setInferred(INFERRED_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__ORIGINAL:
				setOriginal(ORIGINAL_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__BY:
				setBy((Person)null);
				return;
			case ModelPackage.LOG_ENTRY__VALUES:
				getValues().clear();
				return;
			case ModelPackage.LOG_ENTRY__ILLEGIBLE:
				setIllegible(ILLEGIBLE_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__CHECKED_BY:
				setCheckedBy((Person)null);
				return;
			case ModelPackage.LOG_ENTRY__CHECKED_ON:
				setCheckedOn(CHECKED_ON_EDEFAULT);
				return;
			case ModelPackage.LOG_ENTRY__SCAN:
				setScan((DataFile)null);
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
			case ModelPackage.LOG_ENTRY__AT:
				return AT_EDEFAULT == null ? at != null : !AT_EDEFAULT.equals(at);
			case ModelPackage.LOG_ENTRY__ELAPSED:
				return ELAPSED_EDEFAULT == null ? elapsed != null : !ELAPSED_EDEFAULT.equals(elapsed);
			case ModelPackage.LOG_ENTRY__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.LOG_ENTRY__TEXT:
				return TEXT_EDEFAULT == null ? text != null : !TEXT_EDEFAULT.equals(text);
			case ModelPackage.LOG_ENTRY__ABOUT:
				return about != ABOUT_EDEFAULT;
			case ModelPackage.LOG_ENTRY__LATE:
				return late != LATE_EDEFAULT;
			case ModelPackage.LOG_ENTRY__INFERRED:
				return inferred != INFERRED_EDEFAULT;
			case ModelPackage.LOG_ENTRY__ORIGINAL:
				return ORIGINAL_EDEFAULT == null ? original != null : !ORIGINAL_EDEFAULT.equals(original);
			case ModelPackage.LOG_ENTRY__BY:
				return by != null;
			case ModelPackage.LOG_ENTRY__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.LOG_ENTRY__ILLEGIBLE:
				return ILLEGIBLE_EDEFAULT == null ? illegible != null : !ILLEGIBLE_EDEFAULT.equals(illegible);
			case ModelPackage.LOG_ENTRY__CHECKED_BY:
				return checkedBy != null;
			case ModelPackage.LOG_ENTRY__CHECKED_ON:
				return CHECKED_ON_EDEFAULT == null ? checkedOn != null : !CHECKED_ON_EDEFAULT.equals(checkedOn);
			case ModelPackage.LOG_ENTRY__SCAN:
				return scan != null;
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
		result.append(" (at: ");
		result.append(at);
		result.append(", elapsed: ");
		result.append(elapsed);
		result.append(", kind: ");
		result.append(kind);
		result.append(", text: ");
		result.append(text);
		result.append(", about: ");
		result.append(about);
		result.append(", late: ");
		result.append(late);
		result.append(", inferred: ");
		result.append(inferred);
		result.append(", original: ");
		result.append(original);
		result.append(", illegible: ");
		result.append(illegible);
		result.append(", checkedOn: ");
		result.append(checkedOn);
		result.append(')');
		return result.toString();
	}

} //LogEntryImpl

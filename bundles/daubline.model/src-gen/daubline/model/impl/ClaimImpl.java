/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.Claim;
import daubline.model.ClaimInput;
import daubline.model.Measurement;
import daubline.model.ModelPackage;

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
 * An implementation of the model object '<em><b>Claim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ClaimImpl#getPreservationLimit <em>Preservation Limit</em>}</li>
 *   <li>{@link daubline.model.impl.ClaimImpl#getLimitBecause <em>Limit Because</em>}</li>
 *   <li>{@link daubline.model.impl.ClaimImpl#getMeasurement <em>Measurement</em>}</li>
 *   <li>{@link daubline.model.impl.ClaimImpl#getFormula <em>Formula</em>}</li>
 *   <li>{@link daubline.model.impl.ClaimImpl#getInputs <em>Inputs</em>}</li>
 *   <li>{@link daubline.model.impl.ClaimImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ClaimImpl extends ReadingImpl implements Claim {
	/**
	 * The default value of the '{@link #getPreservationLimit() <em>Preservation Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPreservationLimit()
	 * @generated
	 * @ordered
	 */
	protected static final Double PRESERVATION_LIMIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPreservationLimit() <em>Preservation Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPreservationLimit()
	 * @generated
	 * @ordered
	 */
	protected Double preservationLimit = PRESERVATION_LIMIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLimitBecause() <em>Limit Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLimitBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String LIMIT_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLimitBecause() <em>Limit Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLimitBecause()
	 * @generated
	 * @ordered
	 */
	protected String limitBecause = LIMIT_BECAUSE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMeasurement() <em>Measurement</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasurement()
	 * @generated
	 * @ordered
	 */
	protected Measurement measurement;

	/**
	 * The default value of the '{@link #getFormula() <em>Formula</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormula()
	 * @generated
	 * @ordered
	 */
	protected static final String FORMULA_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFormula() <em>Formula</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormula()
	 * @generated
	 * @ordered
	 */
	protected String formula = FORMULA_EDEFAULT;

	/**
	 * The cached value of the '{@link #getInputs() <em>Inputs</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInputs()
	 * @generated
	 * @ordered
	 */
	protected EList<ClaimInput> inputs;

	/**
	 * The cached value of the '{@link #getBlindly() <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBlindly()
	 * @generated
	 * @ordered
	 */
	protected BlindRecording blindly;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ClaimImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.CLAIM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPreservationLimit() {
		return preservationLimit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPreservationLimit(Double newPreservationLimit) {
		Double oldPreservationLimit = preservationLimit;
		preservationLimit = newPreservationLimit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__PRESERVATION_LIMIT, oldPreservationLimit, preservationLimit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLimitBecause() {
		return limitBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLimitBecause(String newLimitBecause) {
		String oldLimitBecause = limitBecause;
		limitBecause = newLimitBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__LIMIT_BECAUSE, oldLimitBecause, limitBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Measurement getMeasurement() {
		if (measurement != null && measurement.eIsProxy()) {
			InternalEObject oldMeasurement = (InternalEObject)measurement;
			measurement = (Measurement)eResolveProxy(oldMeasurement);
			if (measurement != oldMeasurement) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.CLAIM__MEASUREMENT, oldMeasurement, measurement));
			}
		}
		return measurement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Measurement basicGetMeasurement() {
		return measurement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasurement(Measurement newMeasurement) {
		Measurement oldMeasurement = measurement;
		measurement = newMeasurement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__MEASUREMENT, oldMeasurement, measurement));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFormula() {
		return formula;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormula(String newFormula) {
		String oldFormula = formula;
		formula = newFormula;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__FORMULA, oldFormula, formula));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ClaimInput> getInputs() {
		if (inputs == null) {
			inputs = new EObjectContainmentEList<ClaimInput>(ClaimInput.class, this, ModelPackage.CLAIM__INPUTS);
		}
		return inputs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BlindRecording getBlindly() {
		if (blindly != null && blindly.eIsProxy()) {
			InternalEObject oldBlindly = (InternalEObject)blindly;
			blindly = (BlindRecording)eResolveProxy(oldBlindly);
			if (blindly != oldBlindly) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.CLAIM__BLINDLY, oldBlindly, blindly));
			}
		}
		return blindly;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public BlindRecording basicGetBlindly() {
		return blindly;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlindly(BlindRecording newBlindly) {
		BlindRecording oldBlindly = blindly;
		blindly = newBlindly;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLAIM__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.CLAIM__INPUTS:
				return ((InternalEList<?>)getInputs()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.CLAIM__PRESERVATION_LIMIT:
				return getPreservationLimit();
			case ModelPackage.CLAIM__LIMIT_BECAUSE:
				return getLimitBecause();
			case ModelPackage.CLAIM__MEASUREMENT:
				if (resolve) return getMeasurement();
				return basicGetMeasurement();
			case ModelPackage.CLAIM__FORMULA:
				return getFormula();
			case ModelPackage.CLAIM__INPUTS:
				return getInputs();
			case ModelPackage.CLAIM__BLINDLY:
				if (resolve) return getBlindly();
				return basicGetBlindly();
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
			case ModelPackage.CLAIM__PRESERVATION_LIMIT:
				setPreservationLimit((Double)newValue);
				return;
			case ModelPackage.CLAIM__LIMIT_BECAUSE:
				setLimitBecause((String)newValue);
				return;
			case ModelPackage.CLAIM__MEASUREMENT:
				setMeasurement((Measurement)newValue);
				return;
			case ModelPackage.CLAIM__FORMULA:
				setFormula((String)newValue);
				return;
			case ModelPackage.CLAIM__INPUTS:
				getInputs().clear();
				getInputs().addAll((Collection<? extends ClaimInput>)newValue);
				return;
			case ModelPackage.CLAIM__BLINDLY:
				setBlindly((BlindRecording)newValue);
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
			case ModelPackage.CLAIM__PRESERVATION_LIMIT:
				setPreservationLimit(PRESERVATION_LIMIT_EDEFAULT);
				return;
			case ModelPackage.CLAIM__LIMIT_BECAUSE:
				setLimitBecause(LIMIT_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.CLAIM__MEASUREMENT:
				setMeasurement((Measurement)null);
				return;
			case ModelPackage.CLAIM__FORMULA:
				setFormula(FORMULA_EDEFAULT);
				return;
			case ModelPackage.CLAIM__INPUTS:
				getInputs().clear();
				return;
			case ModelPackage.CLAIM__BLINDLY:
				setBlindly((BlindRecording)null);
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
			case ModelPackage.CLAIM__PRESERVATION_LIMIT:
				return PRESERVATION_LIMIT_EDEFAULT == null ? preservationLimit != null : !PRESERVATION_LIMIT_EDEFAULT.equals(preservationLimit);
			case ModelPackage.CLAIM__LIMIT_BECAUSE:
				return LIMIT_BECAUSE_EDEFAULT == null ? limitBecause != null : !LIMIT_BECAUSE_EDEFAULT.equals(limitBecause);
			case ModelPackage.CLAIM__MEASUREMENT:
				return measurement != null;
			case ModelPackage.CLAIM__FORMULA:
				return FORMULA_EDEFAULT == null ? formula != null : !FORMULA_EDEFAULT.equals(formula);
			case ModelPackage.CLAIM__INPUTS:
				return inputs != null && !inputs.isEmpty();
			case ModelPackage.CLAIM__BLINDLY:
				return blindly != null;
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
		result.append(" (preservationLimit: ");
		result.append(preservationLimit);
		result.append(", limitBecause: ");
		result.append(limitBecause);
		result.append(", formula: ");
		result.append(formula);
		result.append(')');
		return result.toString();
	}

} //ClaimImpl

/**
 */
package daubline.model.impl;

import daubline.model.Claim;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Claim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ClaimImpl#getPreservationLimit <em>Preservation Limit</em>}</li>
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
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.CLAIM__PRESERVATION_LIMIT:
				return getPreservationLimit();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.CLAIM__PRESERVATION_LIMIT:
				setPreservationLimit((Double)newValue);
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
		result.append(')');
		return result.toString();
	}

} //ClaimImpl

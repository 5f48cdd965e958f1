/**
 */
package daubline.model.impl;

import daubline.model.ForbiddenCombination;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Forbidden Combination</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ForbiddenCombinationImpl#getConditions <em>Conditions</em>}</li>
 *   <li>{@link daubline.model.impl.ForbiddenCombinationImpl#getBecause <em>Because</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ForbiddenCombinationImpl extends IdentifiedImpl implements ForbiddenCombination {
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
	 * The default value of the '{@link #getBecause() <em>Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBecause() <em>Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBecause()
	 * @generated
	 * @ordered
	 */
	protected String because = BECAUSE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ForbiddenCombinationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.FORBIDDEN_COMBINATION;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FORBIDDEN_COMBINATION__CONDITIONS, oldConditions, conditions));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBecause() {
		return because;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBecause(String newBecause) {
		String oldBecause = because;
		because = newBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FORBIDDEN_COMBINATION__BECAUSE, oldBecause, because));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.FORBIDDEN_COMBINATION__CONDITIONS:
				return getConditions();
			case ModelPackage.FORBIDDEN_COMBINATION__BECAUSE:
				return getBecause();
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
			case ModelPackage.FORBIDDEN_COMBINATION__CONDITIONS:
				setConditions((String)newValue);
				return;
			case ModelPackage.FORBIDDEN_COMBINATION__BECAUSE:
				setBecause((String)newValue);
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
			case ModelPackage.FORBIDDEN_COMBINATION__CONDITIONS:
				setConditions(CONDITIONS_EDEFAULT);
				return;
			case ModelPackage.FORBIDDEN_COMBINATION__BECAUSE:
				setBecause(BECAUSE_EDEFAULT);
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
			case ModelPackage.FORBIDDEN_COMBINATION__CONDITIONS:
				return CONDITIONS_EDEFAULT == null ? conditions != null : !CONDITIONS_EDEFAULT.equals(conditions);
			case ModelPackage.FORBIDDEN_COMBINATION__BECAUSE:
				return BECAUSE_EDEFAULT == null ? because != null : !BECAUSE_EDEFAULT.equals(because);
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
		result.append(" (conditions: ");
		result.append(conditions);
		result.append(", because: ");
		result.append(because);
		result.append(')');
		return result.toString();
	}

} //ForbiddenCombinationImpl

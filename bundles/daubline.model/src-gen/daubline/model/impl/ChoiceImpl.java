/**
 */
package daubline.model.impl;

import daubline.base.Basis;

import daubline.model.Choice;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Choice</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.ChoiceImpl#getBasis <em>Basis</em>}</li>
 *   <li>{@link daubline.model.impl.ChoiceImpl#getBecause <em>Because</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ChoiceImpl extends ReadingImpl implements Choice {
	/**
	 * The default value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected static final Basis BASIS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBasis() <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBasis()
	 * @generated
	 * @ordered
	 */
	protected Basis basis = BASIS_EDEFAULT;

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
	protected ChoiceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.CHOICE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Basis getBasis() {
		return basis;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasis(Basis newBasis) {
		Basis oldBasis = basis;
		basis = newBasis;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CHOICE__BASIS, oldBasis, basis));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CHOICE__BECAUSE, oldBecause, because));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.CHOICE__BASIS:
				return getBasis();
			case ModelPackage.CHOICE__BECAUSE:
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
			case ModelPackage.CHOICE__BASIS:
				setBasis((Basis)newValue);
				return;
			case ModelPackage.CHOICE__BECAUSE:
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
			case ModelPackage.CHOICE__BASIS:
				setBasis(BASIS_EDEFAULT);
				return;
			case ModelPackage.CHOICE__BECAUSE:
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
			case ModelPackage.CHOICE__BASIS:
				return BASIS_EDEFAULT == null ? basis != null : !BASIS_EDEFAULT.equals(basis);
			case ModelPackage.CHOICE__BECAUSE:
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
		result.append(" (basis: ");
		result.append(basis);
		result.append(", because: ");
		result.append(because);
		result.append(')');
		return result.toString();
	}

} //ChoiceImpl

/**
 */
package daubline.model.impl;

import daubline.model.Hazard;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Hazard</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.HazardImpl#getWho <em>Who</em>}</li>
 *   <li>{@link daubline.model.impl.HazardImpl#getControl <em>Control</em>}</li>
 *   <li>{@link daubline.model.impl.HazardImpl#getOwner <em>Owner</em>}</li>
 *   <li>{@link daubline.model.impl.HazardImpl#getReviewOn <em>Review On</em>}</li>
 *   <li>{@link daubline.model.impl.HazardImpl#getNotApplicableBecause <em>Not Applicable Because</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HazardImpl extends NamedImpl implements Hazard {
	/**
	 * The default value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected static final String WHO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected String who = WHO_EDEFAULT;

	/**
	 * The default value of the '{@link #getControl() <em>Control</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getControl()
	 * @generated
	 * @ordered
	 */
	protected static final String CONTROL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getControl() <em>Control</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getControl()
	 * @generated
	 * @ordered
	 */
	protected String control = CONTROL_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwner() <em>Owner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwner()
	 * @generated
	 * @ordered
	 */
	protected static final String OWNER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOwner() <em>Owner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwner()
	 * @generated
	 * @ordered
	 */
	protected String owner = OWNER_EDEFAULT;

	/**
	 * The default value of the '{@link #getReviewOn() <em>Review On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReviewOn()
	 * @generated
	 * @ordered
	 */
	protected static final String REVIEW_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReviewOn() <em>Review On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReviewOn()
	 * @generated
	 * @ordered
	 */
	protected String reviewOn = REVIEW_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getNotApplicableBecause() <em>Not Applicable Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotApplicableBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String NOT_APPLICABLE_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNotApplicableBecause() <em>Not Applicable Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotApplicableBecause()
	 * @generated
	 * @ordered
	 */
	protected String notApplicableBecause = NOT_APPLICABLE_BECAUSE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HazardImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.HAZARD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho() {
		return who;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho) {
		String oldWho = who;
		who = newWho;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.HAZARD__WHO, oldWho, who));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getControl() {
		return control;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setControl(String newControl) {
		String oldControl = control;
		control = newControl;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.HAZARD__CONTROL, oldControl, control));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOwner() {
		return owner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwner(String newOwner) {
		String oldOwner = owner;
		owner = newOwner;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.HAZARD__OWNER, oldOwner, owner));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReviewOn() {
		return reviewOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReviewOn(String newReviewOn) {
		String oldReviewOn = reviewOn;
		reviewOn = newReviewOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.HAZARD__REVIEW_ON, oldReviewOn, reviewOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNotApplicableBecause() {
		return notApplicableBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNotApplicableBecause(String newNotApplicableBecause) {
		String oldNotApplicableBecause = notApplicableBecause;
		notApplicableBecause = newNotApplicableBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.HAZARD__NOT_APPLICABLE_BECAUSE, oldNotApplicableBecause, notApplicableBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.HAZARD__WHO:
				return getWho();
			case ModelPackage.HAZARD__CONTROL:
				return getControl();
			case ModelPackage.HAZARD__OWNER:
				return getOwner();
			case ModelPackage.HAZARD__REVIEW_ON:
				return getReviewOn();
			case ModelPackage.HAZARD__NOT_APPLICABLE_BECAUSE:
				return getNotApplicableBecause();
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
			case ModelPackage.HAZARD__WHO:
				setWho((String)newValue);
				return;
			case ModelPackage.HAZARD__CONTROL:
				setControl((String)newValue);
				return;
			case ModelPackage.HAZARD__OWNER:
				setOwner((String)newValue);
				return;
			case ModelPackage.HAZARD__REVIEW_ON:
				setReviewOn((String)newValue);
				return;
			case ModelPackage.HAZARD__NOT_APPLICABLE_BECAUSE:
				setNotApplicableBecause((String)newValue);
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
			case ModelPackage.HAZARD__WHO:
				setWho(WHO_EDEFAULT);
				return;
			case ModelPackage.HAZARD__CONTROL:
				setControl(CONTROL_EDEFAULT);
				return;
			case ModelPackage.HAZARD__OWNER:
				setOwner(OWNER_EDEFAULT);
				return;
			case ModelPackage.HAZARD__REVIEW_ON:
				setReviewOn(REVIEW_ON_EDEFAULT);
				return;
			case ModelPackage.HAZARD__NOT_APPLICABLE_BECAUSE:
				setNotApplicableBecause(NOT_APPLICABLE_BECAUSE_EDEFAULT);
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
			case ModelPackage.HAZARD__WHO:
				return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
			case ModelPackage.HAZARD__CONTROL:
				return CONTROL_EDEFAULT == null ? control != null : !CONTROL_EDEFAULT.equals(control);
			case ModelPackage.HAZARD__OWNER:
				return OWNER_EDEFAULT == null ? owner != null : !OWNER_EDEFAULT.equals(owner);
			case ModelPackage.HAZARD__REVIEW_ON:
				return REVIEW_ON_EDEFAULT == null ? reviewOn != null : !REVIEW_ON_EDEFAULT.equals(reviewOn);
			case ModelPackage.HAZARD__NOT_APPLICABLE_BECAUSE:
				return NOT_APPLICABLE_BECAUSE_EDEFAULT == null ? notApplicableBecause != null : !NOT_APPLICABLE_BECAUSE_EDEFAULT.equals(notApplicableBecause);
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
		result.append(" (who: ");
		result.append(who);
		result.append(", control: ");
		result.append(control);
		result.append(", owner: ");
		result.append(owner);
		result.append(", reviewOn: ");
		result.append(reviewOn);
		result.append(", notApplicableBecause: ");
		result.append(notApplicableBecause);
		result.append(')');
		return result.toString();
	}

} //HazardImpl

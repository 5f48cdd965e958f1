/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.Person;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Person</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.PersonImpl#getRole <em>Role</em>}</li>
 *   <li>{@link daubline.model.impl.PersonImpl#getSmeltsBefore <em>Smelts Before</em>}</li>
 *   <li>{@link daubline.model.impl.PersonImpl#isMayPublishName <em>May Publish Name</em>}</li>
 *   <li>{@link daubline.model.impl.PersonImpl#isMayPublishPhotograph <em>May Publish Photograph</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PersonImpl extends NamedImpl implements Person {
	/**
	 * The default value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected static final String ROLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected String role = ROLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSmeltsBefore() <em>Smelts Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmeltsBefore()
	 * @generated
	 * @ordered
	 */
	protected static final Integer SMELTS_BEFORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSmeltsBefore() <em>Smelts Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSmeltsBefore()
	 * @generated
	 * @ordered
	 */
	protected Integer smeltsBefore = SMELTS_BEFORE_EDEFAULT;

	/**
	 * The default value of the '{@link #isMayPublishName() <em>May Publish Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isMayPublishName()
	 * @generated
	 * @ordered
	 */
	protected static final boolean MAY_PUBLISH_NAME_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isMayPublishName() <em>May Publish Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isMayPublishName()
	 * @generated
	 * @ordered
	 */
	protected boolean mayPublishName = MAY_PUBLISH_NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #isMayPublishPhotograph() <em>May Publish Photograph</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isMayPublishPhotograph()
	 * @generated
	 * @ordered
	 */
	protected static final boolean MAY_PUBLISH_PHOTOGRAPH_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isMayPublishPhotograph() <em>May Publish Photograph</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isMayPublishPhotograph()
	 * @generated
	 * @ordered
	 */
	protected boolean mayPublishPhotograph = MAY_PUBLISH_PHOTOGRAPH_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PersonImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PERSON;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRole() {
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(String newRole) {
		String oldRole = role;
		role = newRole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PERSON__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getSmeltsBefore() {
		return smeltsBefore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSmeltsBefore(Integer newSmeltsBefore) {
		Integer oldSmeltsBefore = smeltsBefore;
		smeltsBefore = newSmeltsBefore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PERSON__SMELTS_BEFORE, oldSmeltsBefore, smeltsBefore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isMayPublishName() {
		return mayPublishName;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMayPublishName(boolean newMayPublishName) {
		boolean oldMayPublishName = mayPublishName;
		mayPublishName = newMayPublishName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PERSON__MAY_PUBLISH_NAME, oldMayPublishName, mayPublishName));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isMayPublishPhotograph() {
		return mayPublishPhotograph;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMayPublishPhotograph(boolean newMayPublishPhotograph) {
		boolean oldMayPublishPhotograph = mayPublishPhotograph;
		mayPublishPhotograph = newMayPublishPhotograph;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PERSON__MAY_PUBLISH_PHOTOGRAPH, oldMayPublishPhotograph, mayPublishPhotograph));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.PERSON__ROLE:
				return getRole();
			case ModelPackage.PERSON__SMELTS_BEFORE:
				return getSmeltsBefore();
			case ModelPackage.PERSON__MAY_PUBLISH_NAME:
				return isMayPublishName();
			case ModelPackage.PERSON__MAY_PUBLISH_PHOTOGRAPH:
				return isMayPublishPhotograph();
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
			case ModelPackage.PERSON__ROLE:
				setRole((String)newValue);
				return;
			case ModelPackage.PERSON__SMELTS_BEFORE:
				setSmeltsBefore((Integer)newValue);
				return;
			case ModelPackage.PERSON__MAY_PUBLISH_NAME:
				setMayPublishName((Boolean)newValue);
				return;
			case ModelPackage.PERSON__MAY_PUBLISH_PHOTOGRAPH:
				setMayPublishPhotograph((Boolean)newValue);
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
			case ModelPackage.PERSON__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case ModelPackage.PERSON__SMELTS_BEFORE:
				setSmeltsBefore(SMELTS_BEFORE_EDEFAULT);
				return;
			case ModelPackage.PERSON__MAY_PUBLISH_NAME:
				setMayPublishName(MAY_PUBLISH_NAME_EDEFAULT);
				return;
			case ModelPackage.PERSON__MAY_PUBLISH_PHOTOGRAPH:
				setMayPublishPhotograph(MAY_PUBLISH_PHOTOGRAPH_EDEFAULT);
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
			case ModelPackage.PERSON__ROLE:
				return ROLE_EDEFAULT == null ? role != null : !ROLE_EDEFAULT.equals(role);
			case ModelPackage.PERSON__SMELTS_BEFORE:
				return SMELTS_BEFORE_EDEFAULT == null ? smeltsBefore != null : !SMELTS_BEFORE_EDEFAULT.equals(smeltsBefore);
			case ModelPackage.PERSON__MAY_PUBLISH_NAME:
				return mayPublishName != MAY_PUBLISH_NAME_EDEFAULT;
			case ModelPackage.PERSON__MAY_PUBLISH_PHOTOGRAPH:
				return mayPublishPhotograph != MAY_PUBLISH_PHOTOGRAPH_EDEFAULT;
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
		result.append(" (role: ");
		result.append(role);
		result.append(", smeltsBefore: ");
		result.append(smeltsBefore);
		result.append(", mayPublishName: ");
		result.append(mayPublishName);
		result.append(", mayPublishPhotograph: ");
		result.append(mayPublishPhotograph);
		result.append(')');
		return result.toString();
	}

} //PersonImpl

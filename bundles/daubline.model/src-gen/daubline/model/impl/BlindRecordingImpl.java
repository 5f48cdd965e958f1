/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.ModelPackage;
import daubline.model.Person;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Blind Recording</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.BlindRecordingImpl#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.impl.BlindRecordingImpl#getBegun <em>Begun</em>}</li>
 *   <li>{@link daubline.model.impl.BlindRecordingImpl#getEnded <em>Ended</em>}</li>
 *   <li>{@link daubline.model.impl.BlindRecordingImpl#getEndedBy <em>Ended By</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BlindRecordingImpl extends IdentifiedImpl implements BlindRecording {
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
	 * The default value of the '{@link #getBegun() <em>Begun</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBegun()
	 * @generated
	 * @ordered
	 */
	protected static final String BEGUN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBegun() <em>Begun</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBegun()
	 * @generated
	 * @ordered
	 */
	protected String begun = BEGUN_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnded() <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnded()
	 * @generated
	 * @ordered
	 */
	protected static final String ENDED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEnded() <em>Ended</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnded()
	 * @generated
	 * @ordered
	 */
	protected String ended = ENDED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getEndedBy() <em>Ended By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndedBy()
	 * @generated
	 * @ordered
	 */
	protected Person endedBy;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BlindRecordingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.BLIND_RECORDING;
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.BLIND_RECORDING__BY, oldBy, by));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BLIND_RECORDING__BY, oldBy, by));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBegun() {
		return begun;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBegun(String newBegun) {
		String oldBegun = begun;
		begun = newBegun;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BLIND_RECORDING__BEGUN, oldBegun, begun));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEnded() {
		return ended;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnded(String newEnded) {
		String oldEnded = ended;
		ended = newEnded;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BLIND_RECORDING__ENDED, oldEnded, ended));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person getEndedBy() {
		if (endedBy != null && endedBy.eIsProxy()) {
			InternalEObject oldEndedBy = (InternalEObject)endedBy;
			endedBy = (Person)eResolveProxy(oldEndedBy);
			if (endedBy != oldEndedBy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.BLIND_RECORDING__ENDED_BY, oldEndedBy, endedBy));
			}
		}
		return endedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Person basicGetEndedBy() {
		return endedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndedBy(Person newEndedBy) {
		Person oldEndedBy = endedBy;
		endedBy = newEndedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BLIND_RECORDING__ENDED_BY, oldEndedBy, endedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.BLIND_RECORDING__BY:
				if (resolve) return getBy();
				return basicGetBy();
			case ModelPackage.BLIND_RECORDING__BEGUN:
				return getBegun();
			case ModelPackage.BLIND_RECORDING__ENDED:
				return getEnded();
			case ModelPackage.BLIND_RECORDING__ENDED_BY:
				if (resolve) return getEndedBy();
				return basicGetEndedBy();
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
			case ModelPackage.BLIND_RECORDING__BY:
				setBy((Person)newValue);
				return;
			case ModelPackage.BLIND_RECORDING__BEGUN:
				setBegun((String)newValue);
				return;
			case ModelPackage.BLIND_RECORDING__ENDED:
				setEnded((String)newValue);
				return;
			case ModelPackage.BLIND_RECORDING__ENDED_BY:
				setEndedBy((Person)newValue);
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
			case ModelPackage.BLIND_RECORDING__BY:
				setBy((Person)null);
				return;
			case ModelPackage.BLIND_RECORDING__BEGUN:
				setBegun(BEGUN_EDEFAULT);
				return;
			case ModelPackage.BLIND_RECORDING__ENDED:
				setEnded(ENDED_EDEFAULT);
				return;
			case ModelPackage.BLIND_RECORDING__ENDED_BY:
				setEndedBy((Person)null);
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
			case ModelPackage.BLIND_RECORDING__BY:
				return by != null;
			case ModelPackage.BLIND_RECORDING__BEGUN:
				return BEGUN_EDEFAULT == null ? begun != null : !BEGUN_EDEFAULT.equals(begun);
			case ModelPackage.BLIND_RECORDING__ENDED:
				return ENDED_EDEFAULT == null ? ended != null : !ENDED_EDEFAULT.equals(ended);
			case ModelPackage.BLIND_RECORDING__ENDED_BY:
				return endedBy != null;
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
		result.append(" (begun: ");
		result.append(begun);
		result.append(", ended: ");
		result.append(ended);
		result.append(')');
		return result.toString();
	}

} //BlindRecordingImpl

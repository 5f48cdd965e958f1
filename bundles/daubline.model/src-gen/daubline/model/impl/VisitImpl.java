/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.RemainsSheet;
import daubline.model.Visit;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Visit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.VisitImpl#getDueOn <em>Due On</em>}</li>
 *   <li>{@link daubline.model.impl.VisitImpl#getVisitedOn <em>Visited On</em>}</li>
 *   <li>{@link daubline.model.impl.VisitImpl#getNotVisitedBecause <em>Not Visited Because</em>}</li>
 *   <li>{@link daubline.model.impl.VisitImpl#getEndedBecause <em>Ended Because</em>}</li>
 *   <li>{@link daubline.model.impl.VisitImpl#getRemains <em>Remains</em>}</li>
 * </ul>
 *
 * @generated
 */
public class VisitImpl extends NamedImpl implements Visit {
	/**
	 * The default value of the '{@link #getDueOn() <em>Due On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDueOn()
	 * @generated
	 * @ordered
	 */
	protected static final String DUE_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDueOn() <em>Due On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDueOn()
	 * @generated
	 * @ordered
	 */
	protected String dueOn = DUE_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getVisitedOn() <em>Visited On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVisitedOn()
	 * @generated
	 * @ordered
	 */
	protected static final String VISITED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVisitedOn() <em>Visited On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVisitedOn()
	 * @generated
	 * @ordered
	 */
	protected String visitedOn = VISITED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getNotVisitedBecause() <em>Not Visited Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotVisitedBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String NOT_VISITED_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNotVisitedBecause() <em>Not Visited Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNotVisitedBecause()
	 * @generated
	 * @ordered
	 */
	protected String notVisitedBecause = NOT_VISITED_BECAUSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getEndedBecause() <em>Ended Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndedBecause()
	 * @generated
	 * @ordered
	 */
	protected static final String ENDED_BECAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEndedBecause() <em>Ended Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndedBecause()
	 * @generated
	 * @ordered
	 */
	protected String endedBecause = ENDED_BECAUSE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRemains() <em>Remains</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRemains()
	 * @generated
	 * @ordered
	 */
	protected RemainsSheet remains;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected VisitImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.VISIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDueOn() {
		return dueOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDueOn(String newDueOn) {
		String oldDueOn = dueOn;
		dueOn = newDueOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VISIT__DUE_ON, oldDueOn, dueOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVisitedOn() {
		return visitedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVisitedOn(String newVisitedOn) {
		String oldVisitedOn = visitedOn;
		visitedOn = newVisitedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VISIT__VISITED_ON, oldVisitedOn, visitedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNotVisitedBecause() {
		return notVisitedBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNotVisitedBecause(String newNotVisitedBecause) {
		String oldNotVisitedBecause = notVisitedBecause;
		notVisitedBecause = newNotVisitedBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VISIT__NOT_VISITED_BECAUSE, oldNotVisitedBecause, notVisitedBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEndedBecause() {
		return endedBecause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndedBecause(String newEndedBecause) {
		String oldEndedBecause = endedBecause;
		endedBecause = newEndedBecause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VISIT__ENDED_BECAUSE, oldEndedBecause, endedBecause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RemainsSheet getRemains() {
		return remains;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRemains(RemainsSheet newRemains, NotificationChain msgs) {
		RemainsSheet oldRemains = remains;
		remains = newRemains;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, ModelPackage.VISIT__REMAINS, oldRemains, newRemains);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemains(RemainsSheet newRemains) {
		if (newRemains != remains) {
			NotificationChain msgs = null;
			if (remains != null)
				msgs = ((InternalEObject)remains).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - ModelPackage.VISIT__REMAINS, null, msgs);
			if (newRemains != null)
				msgs = ((InternalEObject)newRemains).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - ModelPackage.VISIT__REMAINS, null, msgs);
			msgs = basicSetRemains(newRemains, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VISIT__REMAINS, newRemains, newRemains));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.VISIT__REMAINS:
				return basicSetRemains(null, msgs);
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
			case ModelPackage.VISIT__DUE_ON:
				return getDueOn();
			case ModelPackage.VISIT__VISITED_ON:
				return getVisitedOn();
			case ModelPackage.VISIT__NOT_VISITED_BECAUSE:
				return getNotVisitedBecause();
			case ModelPackage.VISIT__ENDED_BECAUSE:
				return getEndedBecause();
			case ModelPackage.VISIT__REMAINS:
				return getRemains();
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
			case ModelPackage.VISIT__DUE_ON:
				setDueOn((String)newValue);
				return;
			case ModelPackage.VISIT__VISITED_ON:
				setVisitedOn((String)newValue);
				return;
			case ModelPackage.VISIT__NOT_VISITED_BECAUSE:
				setNotVisitedBecause((String)newValue);
				return;
			case ModelPackage.VISIT__ENDED_BECAUSE:
				setEndedBecause((String)newValue);
				return;
			case ModelPackage.VISIT__REMAINS:
				setRemains((RemainsSheet)newValue);
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
			case ModelPackage.VISIT__DUE_ON:
				setDueOn(DUE_ON_EDEFAULT);
				return;
			case ModelPackage.VISIT__VISITED_ON:
				setVisitedOn(VISITED_ON_EDEFAULT);
				return;
			case ModelPackage.VISIT__NOT_VISITED_BECAUSE:
				setNotVisitedBecause(NOT_VISITED_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.VISIT__ENDED_BECAUSE:
				setEndedBecause(ENDED_BECAUSE_EDEFAULT);
				return;
			case ModelPackage.VISIT__REMAINS:
				setRemains((RemainsSheet)null);
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
			case ModelPackage.VISIT__DUE_ON:
				return DUE_ON_EDEFAULT == null ? dueOn != null : !DUE_ON_EDEFAULT.equals(dueOn);
			case ModelPackage.VISIT__VISITED_ON:
				return VISITED_ON_EDEFAULT == null ? visitedOn != null : !VISITED_ON_EDEFAULT.equals(visitedOn);
			case ModelPackage.VISIT__NOT_VISITED_BECAUSE:
				return NOT_VISITED_BECAUSE_EDEFAULT == null ? notVisitedBecause != null : !NOT_VISITED_BECAUSE_EDEFAULT.equals(notVisitedBecause);
			case ModelPackage.VISIT__ENDED_BECAUSE:
				return ENDED_BECAUSE_EDEFAULT == null ? endedBecause != null : !ENDED_BECAUSE_EDEFAULT.equals(endedBecause);
			case ModelPackage.VISIT__REMAINS:
				return remains != null;
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
		result.append(" (dueOn: ");
		result.append(dueOn);
		result.append(", visitedOn: ");
		result.append(visitedOn);
		result.append(", notVisitedBecause: ");
		result.append(notVisitedBecause);
		result.append(", endedBecause: ");
		result.append(endedBecause);
		result.append(')');
		return result.toString();
	}

} //VisitImpl

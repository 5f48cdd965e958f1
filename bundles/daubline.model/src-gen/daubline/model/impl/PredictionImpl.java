/**
 */
package daubline.model.impl;

import daubline.model.ModelPackage;
import daubline.model.Prediction;
import daubline.model.Reconstruction;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Prediction</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.PredictionImpl#getStatedOn <em>Stated On</em>}</li>
 *   <li>{@link daubline.model.impl.PredictionImpl#isLocked <em>Locked</em>}</li>
 *   <li>{@link daubline.model.impl.PredictionImpl#getReconstruction <em>Reconstruction</em>}</li>
 *   <li>{@link daubline.model.impl.PredictionImpl#getEngine <em>Engine</em>}</li>
 *   <li>{@link daubline.model.impl.PredictionImpl#getRevises <em>Revises</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PredictionImpl extends ReadingImpl implements Prediction {
	/**
	 * The default value of the '{@link #getStatedOn() <em>Stated On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStatedOn()
	 * @generated
	 * @ordered
	 */
	protected static final String STATED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStatedOn() <em>Stated On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStatedOn()
	 * @generated
	 * @ordered
	 */
	protected String statedOn = STATED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #isLocked() <em>Locked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLocked()
	 * @generated
	 * @ordered
	 */
	protected static final boolean LOCKED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isLocked() <em>Locked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLocked()
	 * @generated
	 * @ordered
	 */
	protected boolean locked = LOCKED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getReconstruction() <em>Reconstruction</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReconstruction()
	 * @generated
	 * @ordered
	 */
	protected Reconstruction reconstruction;

	/**
	 * The default value of the '{@link #getEngine() <em>Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngine()
	 * @generated
	 * @ordered
	 */
	protected static final String ENGINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEngine() <em>Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEngine()
	 * @generated
	 * @ordered
	 */
	protected String engine = ENGINE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRevises() <em>Revises</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevises()
	 * @generated
	 * @ordered
	 */
	protected Prediction revises;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PredictionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PREDICTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStatedOn() {
		return statedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStatedOn(String newStatedOn) {
		String oldStatedOn = statedOn;
		statedOn = newStatedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREDICTION__STATED_ON, oldStatedOn, statedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLocked() {
		return locked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLocked(boolean newLocked) {
		boolean oldLocked = locked;
		locked = newLocked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREDICTION__LOCKED, oldLocked, locked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Reconstruction getReconstruction() {
		if (reconstruction != null && reconstruction.eIsProxy()) {
			InternalEObject oldReconstruction = (InternalEObject)reconstruction;
			reconstruction = (Reconstruction)eResolveProxy(oldReconstruction);
			if (reconstruction != oldReconstruction) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.PREDICTION__RECONSTRUCTION, oldReconstruction, reconstruction));
			}
		}
		return reconstruction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Reconstruction basicGetReconstruction() {
		return reconstruction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReconstruction(Reconstruction newReconstruction) {
		Reconstruction oldReconstruction = reconstruction;
		reconstruction = newReconstruction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREDICTION__RECONSTRUCTION, oldReconstruction, reconstruction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getEngine() {
		return engine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEngine(String newEngine) {
		String oldEngine = engine;
		engine = newEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREDICTION__ENGINE, oldEngine, engine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Prediction getRevises() {
		if (revises != null && revises.eIsProxy()) {
			InternalEObject oldRevises = (InternalEObject)revises;
			revises = (Prediction)eResolveProxy(oldRevises);
			if (revises != oldRevises) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.PREDICTION__REVISES, oldRevises, revises));
			}
		}
		return revises;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Prediction basicGetRevises() {
		return revises;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRevises(Prediction newRevises) {
		Prediction oldRevises = revises;
		revises = newRevises;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PREDICTION__REVISES, oldRevises, revises));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.PREDICTION__STATED_ON:
				return getStatedOn();
			case ModelPackage.PREDICTION__LOCKED:
				return isLocked();
			case ModelPackage.PREDICTION__RECONSTRUCTION:
				if (resolve) return getReconstruction();
				return basicGetReconstruction();
			case ModelPackage.PREDICTION__ENGINE:
				return getEngine();
			case ModelPackage.PREDICTION__REVISES:
				if (resolve) return getRevises();
				return basicGetRevises();
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
			case ModelPackage.PREDICTION__STATED_ON:
				setStatedOn((String)newValue);
				return;
			case ModelPackage.PREDICTION__LOCKED:
				setLocked((Boolean)newValue);
				return;
			case ModelPackage.PREDICTION__RECONSTRUCTION:
				setReconstruction((Reconstruction)newValue);
				return;
			case ModelPackage.PREDICTION__ENGINE:
				setEngine((String)newValue);
				return;
			case ModelPackage.PREDICTION__REVISES:
				setRevises((Prediction)newValue);
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
			case ModelPackage.PREDICTION__STATED_ON:
				setStatedOn(STATED_ON_EDEFAULT);
				return;
			case ModelPackage.PREDICTION__LOCKED:
				setLocked(LOCKED_EDEFAULT);
				return;
			case ModelPackage.PREDICTION__RECONSTRUCTION:
				setReconstruction((Reconstruction)null);
				return;
			case ModelPackage.PREDICTION__ENGINE:
				setEngine(ENGINE_EDEFAULT);
				return;
			case ModelPackage.PREDICTION__REVISES:
				setRevises((Prediction)null);
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
			case ModelPackage.PREDICTION__STATED_ON:
				return STATED_ON_EDEFAULT == null ? statedOn != null : !STATED_ON_EDEFAULT.equals(statedOn);
			case ModelPackage.PREDICTION__LOCKED:
				return locked != LOCKED_EDEFAULT;
			case ModelPackage.PREDICTION__RECONSTRUCTION:
				return reconstruction != null;
			case ModelPackage.PREDICTION__ENGINE:
				return ENGINE_EDEFAULT == null ? engine != null : !ENGINE_EDEFAULT.equals(engine);
			case ModelPackage.PREDICTION__REVISES:
				return revises != null;
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
		result.append(" (statedOn: ");
		result.append(statedOn);
		result.append(", locked: ");
		result.append(locked);
		result.append(", engine: ");
		result.append(engine);
		result.append(')');
		return result.toString();
	}

} //PredictionImpl

/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.Measurement;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Measurement</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.MeasurementImpl#getX1 <em>X1</em>}</li>
 *   <li>{@link daubline.model.impl.MeasurementImpl#getY1 <em>Y1</em>}</li>
 *   <li>{@link daubline.model.impl.MeasurementImpl#getX2 <em>X2</em>}</li>
 *   <li>{@link daubline.model.impl.MeasurementImpl#getY2 <em>Y2</em>}</li>
 *   <li>{@link daubline.model.impl.MeasurementImpl#isScale <em>Scale</em>}</li>
 *   <li>{@link daubline.model.impl.MeasurementImpl#getPointing <em>Pointing</em>}</li>
 *   <li>{@link daubline.model.impl.MeasurementImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MeasurementImpl extends ReadingImpl implements Measurement {
	/**
	 * The default value of the '{@link #getX1() <em>X1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getX1()
	 * @generated
	 * @ordered
	 */
	protected static final Double X1_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getX1() <em>X1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getX1()
	 * @generated
	 * @ordered
	 */
	protected Double x1 = X1_EDEFAULT;

	/**
	 * The default value of the '{@link #getY1() <em>Y1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getY1()
	 * @generated
	 * @ordered
	 */
	protected static final Double Y1_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getY1() <em>Y1</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getY1()
	 * @generated
	 * @ordered
	 */
	protected Double y1 = Y1_EDEFAULT;

	/**
	 * The default value of the '{@link #getX2() <em>X2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getX2()
	 * @generated
	 * @ordered
	 */
	protected static final Double X2_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getX2() <em>X2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getX2()
	 * @generated
	 * @ordered
	 */
	protected Double x2 = X2_EDEFAULT;

	/**
	 * The default value of the '{@link #getY2() <em>Y2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getY2()
	 * @generated
	 * @ordered
	 */
	protected static final Double Y2_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getY2() <em>Y2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getY2()
	 * @generated
	 * @ordered
	 */
	protected Double y2 = Y2_EDEFAULT;

	/**
	 * The default value of the '{@link #isScale() <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isScale()
	 * @generated
	 * @ordered
	 */
	protected static final boolean SCALE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isScale() <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isScale()
	 * @generated
	 * @ordered
	 */
	protected boolean scale = SCALE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPointing() <em>Pointing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPointing()
	 * @generated
	 * @ordered
	 */
	protected static final Double POINTING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPointing() <em>Pointing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPointing()
	 * @generated
	 * @ordered
	 */
	protected Double pointing = POINTING_EDEFAULT;

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
	protected MeasurementImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MEASUREMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getX1() {
		return x1;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setX1(Double newX1) {
		Double oldX1 = x1;
		x1 = newX1;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__X1, oldX1, x1));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getY1() {
		return y1;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setY1(Double newY1) {
		Double oldY1 = y1;
		y1 = newY1;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__Y1, oldY1, y1));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getX2() {
		return x2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setX2(Double newX2) {
		Double oldX2 = x2;
		x2 = newX2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__X2, oldX2, x2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getY2() {
		return y2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setY2(Double newY2) {
		Double oldY2 = y2;
		y2 = newY2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__Y2, oldY2, y2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isScale() {
		return scale;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScale(boolean newScale) {
		boolean oldScale = scale;
		scale = newScale;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__SCALE, oldScale, scale));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPointing() {
		return pointing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPointing(Double newPointing) {
		Double oldPointing = pointing;
		pointing = newPointing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__POINTING, oldPointing, pointing));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MEASUREMENT__BLINDLY, oldBlindly, blindly));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MEASUREMENT__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.MEASUREMENT__X1:
				return getX1();
			case ModelPackage.MEASUREMENT__Y1:
				return getY1();
			case ModelPackage.MEASUREMENT__X2:
				return getX2();
			case ModelPackage.MEASUREMENT__Y2:
				return getY2();
			case ModelPackage.MEASUREMENT__SCALE:
				return isScale();
			case ModelPackage.MEASUREMENT__POINTING:
				return getPointing();
			case ModelPackage.MEASUREMENT__BLINDLY:
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
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.MEASUREMENT__X1:
				setX1((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__Y1:
				setY1((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__X2:
				setX2((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__Y2:
				setY2((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__SCALE:
				setScale((Boolean)newValue);
				return;
			case ModelPackage.MEASUREMENT__POINTING:
				setPointing((Double)newValue);
				return;
			case ModelPackage.MEASUREMENT__BLINDLY:
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
			case ModelPackage.MEASUREMENT__X1:
				setX1(X1_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__Y1:
				setY1(Y1_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__X2:
				setX2(X2_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__Y2:
				setY2(Y2_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__SCALE:
				setScale(SCALE_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__POINTING:
				setPointing(POINTING_EDEFAULT);
				return;
			case ModelPackage.MEASUREMENT__BLINDLY:
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
			case ModelPackage.MEASUREMENT__X1:
				return X1_EDEFAULT == null ? x1 != null : !X1_EDEFAULT.equals(x1);
			case ModelPackage.MEASUREMENT__Y1:
				return Y1_EDEFAULT == null ? y1 != null : !Y1_EDEFAULT.equals(y1);
			case ModelPackage.MEASUREMENT__X2:
				return X2_EDEFAULT == null ? x2 != null : !X2_EDEFAULT.equals(x2);
			case ModelPackage.MEASUREMENT__Y2:
				return Y2_EDEFAULT == null ? y2 != null : !Y2_EDEFAULT.equals(y2);
			case ModelPackage.MEASUREMENT__SCALE:
				return scale != SCALE_EDEFAULT;
			case ModelPackage.MEASUREMENT__POINTING:
				return POINTING_EDEFAULT == null ? pointing != null : !POINTING_EDEFAULT.equals(pointing);
			case ModelPackage.MEASUREMENT__BLINDLY:
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
		result.append(" (x1: ");
		result.append(x1);
		result.append(", y1: ");
		result.append(y1);
		result.append(", x2: ");
		result.append(x2);
		result.append(", y2: ");
		result.append(y2);
		result.append(", scale: ");
		result.append(scale);
		result.append(", pointing: ");
		result.append(pointing);
		result.append(')');
		return result.toString();
	}

} //MeasurementImpl

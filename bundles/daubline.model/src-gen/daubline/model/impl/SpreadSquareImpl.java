/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.ModelPackage;
import daubline.model.ResidueClass;
import daubline.model.SpreadSquare;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Spread Square</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.SpreadSquareImpl#getEast <em>East</em>}</li>
 *   <li>{@link daubline.model.impl.SpreadSquareImpl#getNorth <em>North</em>}</li>
 *   <li>{@link daubline.model.impl.SpreadSquareImpl#getSide <em>Side</em>}</li>
 *   <li>{@link daubline.model.impl.SpreadSquareImpl#getResidueClass <em>Residue Class</em>}</li>
 *   <li>{@link daubline.model.impl.SpreadSquareImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SpreadSquareImpl extends ReadingImpl implements SpreadSquare {
	/**
	 * The default value of the '{@link #getEast() <em>East</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEast()
	 * @generated
	 * @ordered
	 */
	protected static final Double EAST_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEast() <em>East</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEast()
	 * @generated
	 * @ordered
	 */
	protected Double east = EAST_EDEFAULT;

	/**
	 * The default value of the '{@link #getNorth() <em>North</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNorth()
	 * @generated
	 * @ordered
	 */
	protected static final Double NORTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNorth() <em>North</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNorth()
	 * @generated
	 * @ordered
	 */
	protected Double north = NORTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSide() <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSide()
	 * @generated
	 * @ordered
	 */
	protected static final Double SIDE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSide() <em>Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSide()
	 * @generated
	 * @ordered
	 */
	protected Double side = SIDE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getResidueClass() <em>Residue Class</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidueClass()
	 * @generated
	 * @ordered
	 */
	protected ResidueClass residueClass;

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
	protected SpreadSquareImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SPREAD_SQUARE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEast() {
		return east;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEast(Double newEast) {
		Double oldEast = east;
		east = newEast;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPREAD_SQUARE__EAST, oldEast, east));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNorth() {
		return north;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNorth(Double newNorth) {
		Double oldNorth = north;
		north = newNorth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPREAD_SQUARE__NORTH, oldNorth, north));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSide() {
		return side;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSide(Double newSide) {
		Double oldSide = side;
		side = newSide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPREAD_SQUARE__SIDE, oldSide, side));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ResidueClass getResidueClass() {
		if (residueClass != null && residueClass.eIsProxy()) {
			InternalEObject oldResidueClass = (InternalEObject)residueClass;
			residueClass = (ResidueClass)eResolveProxy(oldResidueClass);
			if (residueClass != oldResidueClass) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SPREAD_SQUARE__RESIDUE_CLASS, oldResidueClass, residueClass));
			}
		}
		return residueClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ResidueClass basicGetResidueClass() {
		return residueClass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidueClass(ResidueClass newResidueClass) {
		ResidueClass oldResidueClass = residueClass;
		residueClass = newResidueClass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPREAD_SQUARE__RESIDUE_CLASS, oldResidueClass, residueClass));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SPREAD_SQUARE__BLINDLY, oldBlindly, blindly));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPREAD_SQUARE__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SPREAD_SQUARE__EAST:
				return getEast();
			case ModelPackage.SPREAD_SQUARE__NORTH:
				return getNorth();
			case ModelPackage.SPREAD_SQUARE__SIDE:
				return getSide();
			case ModelPackage.SPREAD_SQUARE__RESIDUE_CLASS:
				if (resolve) return getResidueClass();
				return basicGetResidueClass();
			case ModelPackage.SPREAD_SQUARE__BLINDLY:
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
			case ModelPackage.SPREAD_SQUARE__EAST:
				setEast((Double)newValue);
				return;
			case ModelPackage.SPREAD_SQUARE__NORTH:
				setNorth((Double)newValue);
				return;
			case ModelPackage.SPREAD_SQUARE__SIDE:
				setSide((Double)newValue);
				return;
			case ModelPackage.SPREAD_SQUARE__RESIDUE_CLASS:
				setResidueClass((ResidueClass)newValue);
				return;
			case ModelPackage.SPREAD_SQUARE__BLINDLY:
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
			case ModelPackage.SPREAD_SQUARE__EAST:
				setEast(EAST_EDEFAULT);
				return;
			case ModelPackage.SPREAD_SQUARE__NORTH:
				setNorth(NORTH_EDEFAULT);
				return;
			case ModelPackage.SPREAD_SQUARE__SIDE:
				setSide(SIDE_EDEFAULT);
				return;
			case ModelPackage.SPREAD_SQUARE__RESIDUE_CLASS:
				setResidueClass((ResidueClass)null);
				return;
			case ModelPackage.SPREAD_SQUARE__BLINDLY:
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
			case ModelPackage.SPREAD_SQUARE__EAST:
				return EAST_EDEFAULT == null ? east != null : !EAST_EDEFAULT.equals(east);
			case ModelPackage.SPREAD_SQUARE__NORTH:
				return NORTH_EDEFAULT == null ? north != null : !NORTH_EDEFAULT.equals(north);
			case ModelPackage.SPREAD_SQUARE__SIDE:
				return SIDE_EDEFAULT == null ? side != null : !SIDE_EDEFAULT.equals(side);
			case ModelPackage.SPREAD_SQUARE__RESIDUE_CLASS:
				return residueClass != null;
			case ModelPackage.SPREAD_SQUARE__BLINDLY:
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
		result.append(" (east: ");
		result.append(east);
		result.append(", north: ");
		result.append(north);
		result.append(", side: ");
		result.append(side);
		result.append(')');
		return result.toString();
	}

} //SpreadSquareImpl

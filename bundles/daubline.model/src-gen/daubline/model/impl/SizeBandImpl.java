/**
 */
package daubline.model.impl;

import daubline.model.Lot;
import daubline.model.ModelPackage;
import daubline.model.SizeBand;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Size Band</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.SizeBandImpl#getMeshFrom <em>Mesh From</em>}</li>
 *   <li>{@link daubline.model.impl.SizeBandImpl#getMeshTo <em>Mesh To</em>}</li>
 *   <li>{@link daubline.model.impl.SizeBandImpl#getLot <em>Lot</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SizeBandImpl extends ReadingImpl implements SizeBand {
	/**
	 * The default value of the '{@link #getMeshFrom() <em>Mesh From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshFrom()
	 * @generated
	 * @ordered
	 */
	protected static final Double MESH_FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeshFrom() <em>Mesh From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshFrom()
	 * @generated
	 * @ordered
	 */
	protected Double meshFrom = MESH_FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeshTo() <em>Mesh To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshTo()
	 * @generated
	 * @ordered
	 */
	protected static final Double MESH_TO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeshTo() <em>Mesh To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshTo()
	 * @generated
	 * @ordered
	 */
	protected Double meshTo = MESH_TO_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLot() <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLot()
	 * @generated
	 * @ordered
	 */
	protected Lot lot;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SizeBandImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SIZE_BAND;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMeshFrom() {
		return meshFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeshFrom(Double newMeshFrom) {
		Double oldMeshFrom = meshFrom;
		meshFrom = newMeshFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SIZE_BAND__MESH_FROM, oldMeshFrom, meshFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMeshTo() {
		return meshTo;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeshTo(Double newMeshTo) {
		Double oldMeshTo = meshTo;
		meshTo = newMeshTo;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SIZE_BAND__MESH_TO, oldMeshTo, meshTo));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Lot getLot() {
		if (lot != null && lot.eIsProxy()) {
			InternalEObject oldLot = (InternalEObject)lot;
			lot = (Lot)eResolveProxy(oldLot);
			if (lot != oldLot) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SIZE_BAND__LOT, oldLot, lot));
			}
		}
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Lot basicGetLot() {
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLot(Lot newLot) {
		Lot oldLot = lot;
		lot = newLot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SIZE_BAND__LOT, oldLot, lot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SIZE_BAND__MESH_FROM:
				return getMeshFrom();
			case ModelPackage.SIZE_BAND__MESH_TO:
				return getMeshTo();
			case ModelPackage.SIZE_BAND__LOT:
				if (resolve) return getLot();
				return basicGetLot();
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
			case ModelPackage.SIZE_BAND__MESH_FROM:
				setMeshFrom((Double)newValue);
				return;
			case ModelPackage.SIZE_BAND__MESH_TO:
				setMeshTo((Double)newValue);
				return;
			case ModelPackage.SIZE_BAND__LOT:
				setLot((Lot)newValue);
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
			case ModelPackage.SIZE_BAND__MESH_FROM:
				setMeshFrom(MESH_FROM_EDEFAULT);
				return;
			case ModelPackage.SIZE_BAND__MESH_TO:
				setMeshTo(MESH_TO_EDEFAULT);
				return;
			case ModelPackage.SIZE_BAND__LOT:
				setLot((Lot)null);
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
			case ModelPackage.SIZE_BAND__MESH_FROM:
				return MESH_FROM_EDEFAULT == null ? meshFrom != null : !MESH_FROM_EDEFAULT.equals(meshFrom);
			case ModelPackage.SIZE_BAND__MESH_TO:
				return MESH_TO_EDEFAULT == null ? meshTo != null : !MESH_TO_EDEFAULT.equals(meshTo);
			case ModelPackage.SIZE_BAND__LOT:
				return lot != null;
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
		result.append(" (meshFrom: ");
		result.append(meshFrom);
		result.append(", meshTo: ");
		result.append(meshTo);
		result.append(')');
		return result.toString();
	}

} //SizeBandImpl

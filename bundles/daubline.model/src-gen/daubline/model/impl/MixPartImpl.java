/**
 */
package daubline.model.impl;

import daubline.model.Lot;
import daubline.model.MixPart;
import daubline.model.ModelPackage;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mix Part</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.MixPartImpl#getPart <em>Part</em>}</li>
 *   <li>{@link daubline.model.impl.MixPartImpl#getLot <em>Lot</em>}</li>
 *   <li>{@link daubline.model.impl.MixPartImpl#isByVolume <em>By Volume</em>}</li>
 *   <li>{@link daubline.model.impl.MixPartImpl#getBulkDensity <em>Bulk Density</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MixPartImpl extends ReadingImpl implements MixPart {
	/**
	 * The default value of the '{@link #getPart() <em>Part</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPart()
	 * @generated
	 * @ordered
	 */
	protected static final String PART_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPart() <em>Part</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPart()
	 * @generated
	 * @ordered
	 */
	protected String part = PART_EDEFAULT;

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
	 * The default value of the '{@link #isByVolume() <em>By Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isByVolume()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BY_VOLUME_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isByVolume() <em>By Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isByVolume()
	 * @generated
	 * @ordered
	 */
	protected boolean byVolume = BY_VOLUME_EDEFAULT;

	/**
	 * The default value of the '{@link #getBulkDensity() <em>Bulk Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBulkDensity()
	 * @generated
	 * @ordered
	 */
	protected static final Double BULK_DENSITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBulkDensity() <em>Bulk Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBulkDensity()
	 * @generated
	 * @ordered
	 */
	protected Double bulkDensity = BULK_DENSITY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MixPartImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.MIX_PART;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPart() {
		return part;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPart(String newPart) {
		String oldPart = part;
		part = newPart;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MIX_PART__PART, oldPart, part));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.MIX_PART__LOT, oldLot, lot));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MIX_PART__LOT, oldLot, lot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isByVolume() {
		return byVolume;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setByVolume(boolean newByVolume) {
		boolean oldByVolume = byVolume;
		byVolume = newByVolume;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MIX_PART__BY_VOLUME, oldByVolume, byVolume));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBulkDensity() {
		return bulkDensity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBulkDensity(Double newBulkDensity) {
		Double oldBulkDensity = bulkDensity;
		bulkDensity = newBulkDensity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.MIX_PART__BULK_DENSITY, oldBulkDensity, bulkDensity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.MIX_PART__PART:
				return getPart();
			case ModelPackage.MIX_PART__LOT:
				if (resolve) return getLot();
				return basicGetLot();
			case ModelPackage.MIX_PART__BY_VOLUME:
				return isByVolume();
			case ModelPackage.MIX_PART__BULK_DENSITY:
				return getBulkDensity();
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
			case ModelPackage.MIX_PART__PART:
				setPart((String)newValue);
				return;
			case ModelPackage.MIX_PART__LOT:
				setLot((Lot)newValue);
				return;
			case ModelPackage.MIX_PART__BY_VOLUME:
				setByVolume((Boolean)newValue);
				return;
			case ModelPackage.MIX_PART__BULK_DENSITY:
				setBulkDensity((Double)newValue);
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
			case ModelPackage.MIX_PART__PART:
				setPart(PART_EDEFAULT);
				return;
			case ModelPackage.MIX_PART__LOT:
				setLot((Lot)null);
				return;
			case ModelPackage.MIX_PART__BY_VOLUME:
				setByVolume(BY_VOLUME_EDEFAULT);
				return;
			case ModelPackage.MIX_PART__BULK_DENSITY:
				setBulkDensity(BULK_DENSITY_EDEFAULT);
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
			case ModelPackage.MIX_PART__PART:
				return PART_EDEFAULT == null ? part != null : !PART_EDEFAULT.equals(part);
			case ModelPackage.MIX_PART__LOT:
				return lot != null;
			case ModelPackage.MIX_PART__BY_VOLUME:
				return byVolume != BY_VOLUME_EDEFAULT;
			case ModelPackage.MIX_PART__BULK_DENSITY:
				return BULK_DENSITY_EDEFAULT == null ? bulkDensity != null : !BULK_DENSITY_EDEFAULT.equals(bulkDensity);
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
		result.append(" (part: ");
		result.append(part);
		result.append(", byVolume: ");
		result.append(byVolume);
		result.append(", bulkDensity: ");
		result.append(bulkDensity);
		result.append(')');
		return result.toString();
	}

} //MixPartImpl

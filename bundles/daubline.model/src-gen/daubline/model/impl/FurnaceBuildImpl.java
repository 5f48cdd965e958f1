/**
 */
package daubline.model.impl;

import daubline.model.FurnaceBuild;
import daubline.model.LogEntry;
import daubline.model.Lot;
import daubline.model.ModelPackage;
import daubline.model.Reconstruction;
import daubline.model.StagedValue;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Furnace Build</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.FurnaceBuildImpl#getReconstruction <em>Reconstruction</em>}</li>
 *   <li>{@link daubline.model.impl.FurnaceBuildImpl#getBuiltOn <em>Built On</em>}</li>
 *   <li>{@link daubline.model.impl.FurnaceBuildImpl#getLots <em>Lots</em>}</li>
 *   <li>{@link daubline.model.impl.FurnaceBuildImpl#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.impl.FurnaceBuildImpl#getLog <em>Log</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FurnaceBuildImpl extends NamedImpl implements FurnaceBuild {
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
	 * The default value of the '{@link #getBuiltOn() <em>Built On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuiltOn()
	 * @generated
	 * @ordered
	 */
	protected static final String BUILT_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBuiltOn() <em>Built On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBuiltOn()
	 * @generated
	 * @ordered
	 */
	protected String builtOn = BUILT_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<Lot> lots;

	/**
	 * The cached value of the '{@link #getValues() <em>Values</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValues()
	 * @generated
	 * @ordered
	 */
	protected EList<StagedValue> values;

	/**
	 * The cached value of the '{@link #getLog() <em>Log</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLog()
	 * @generated
	 * @ordered
	 */
	protected EList<LogEntry> log;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FurnaceBuildImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.FURNACE_BUILD;
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.FURNACE_BUILD__RECONSTRUCTION, oldReconstruction, reconstruction));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FURNACE_BUILD__RECONSTRUCTION, oldReconstruction, reconstruction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBuiltOn() {
		return builtOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBuiltOn(String newBuiltOn) {
		String oldBuiltOn = builtOn;
		builtOn = newBuiltOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.FURNACE_BUILD__BUILT_ON, oldBuiltOn, builtOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Lot> getLots() {
		if (lots == null) {
			lots = new EObjectResolvingEList<Lot>(Lot.class, this, ModelPackage.FURNACE_BUILD__LOTS);
		}
		return lots;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StagedValue> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<StagedValue>(StagedValue.class, this, ModelPackage.FURNACE_BUILD__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LogEntry> getLog() {
		if (log == null) {
			log = new EObjectContainmentEList<LogEntry>(LogEntry.class, this, ModelPackage.FURNACE_BUILD__LOG);
		}
		return log;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.FURNACE_BUILD__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
			case ModelPackage.FURNACE_BUILD__LOG:
				return ((InternalEList<?>)getLog()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.FURNACE_BUILD__RECONSTRUCTION:
				if (resolve) return getReconstruction();
				return basicGetReconstruction();
			case ModelPackage.FURNACE_BUILD__BUILT_ON:
				return getBuiltOn();
			case ModelPackage.FURNACE_BUILD__LOTS:
				return getLots();
			case ModelPackage.FURNACE_BUILD__VALUES:
				return getValues();
			case ModelPackage.FURNACE_BUILD__LOG:
				return getLog();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.FURNACE_BUILD__RECONSTRUCTION:
				setReconstruction((Reconstruction)newValue);
				return;
			case ModelPackage.FURNACE_BUILD__BUILT_ON:
				setBuiltOn((String)newValue);
				return;
			case ModelPackage.FURNACE_BUILD__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends Lot>)newValue);
				return;
			case ModelPackage.FURNACE_BUILD__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends StagedValue>)newValue);
				return;
			case ModelPackage.FURNACE_BUILD__LOG:
				getLog().clear();
				getLog().addAll((Collection<? extends LogEntry>)newValue);
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
			case ModelPackage.FURNACE_BUILD__RECONSTRUCTION:
				setReconstruction((Reconstruction)null);
				return;
			case ModelPackage.FURNACE_BUILD__BUILT_ON:
				setBuiltOn(BUILT_ON_EDEFAULT);
				return;
			case ModelPackage.FURNACE_BUILD__LOTS:
				getLots().clear();
				return;
			case ModelPackage.FURNACE_BUILD__VALUES:
				getValues().clear();
				return;
			case ModelPackage.FURNACE_BUILD__LOG:
				getLog().clear();
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
			case ModelPackage.FURNACE_BUILD__RECONSTRUCTION:
				return reconstruction != null;
			case ModelPackage.FURNACE_BUILD__BUILT_ON:
				return BUILT_ON_EDEFAULT == null ? builtOn != null : !BUILT_ON_EDEFAULT.equals(builtOn);
			case ModelPackage.FURNACE_BUILD__LOTS:
				return lots != null && !lots.isEmpty();
			case ModelPackage.FURNACE_BUILD__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.FURNACE_BUILD__LOG:
				return log != null && !log.isEmpty();
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
		result.append(" (builtOn: ");
		result.append(builtOn);
		result.append(')');
		return result.toString();
	}

} //FurnaceBuildImpl

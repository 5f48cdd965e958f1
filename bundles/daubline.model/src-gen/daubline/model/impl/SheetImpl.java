/**
 */
package daubline.model.impl;

import daubline.model.Analysis;
import daubline.model.BlindRecording;
import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.ModelPackage;
import daubline.model.Person;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import daubline.model.SpreadSquare;
import daubline.model.WallZone;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.SheetImpl#getRecordedBy <em>Recorded By</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getRecordedOn <em>Recorded On</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#isBlind <em>Blind</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getSamplingFraction <em>Sampling Fraction</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getClaims <em>Claims</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getResidues <em>Residues</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getAnalyses <em>Analyses</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getFiles <em>Files</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getZones <em>Zones</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getSpread <em>Spread</em>}</li>
 *   <li>{@link daubline.model.impl.SheetImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class SheetImpl extends NamedImpl implements Sheet {
	/**
	 * The cached value of the '{@link #getRecordedBy() <em>Recorded By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordedBy()
	 * @generated
	 * @ordered
	 */
	protected Person recordedBy;

	/**
	 * The default value of the '{@link #getRecordedOn() <em>Recorded On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordedOn()
	 * @generated
	 * @ordered
	 */
	protected static final String RECORDED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRecordedOn() <em>Recorded On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecordedOn()
	 * @generated
	 * @ordered
	 */
	protected String recordedOn = RECORDED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #isBlind() <em>Blind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBlind()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BLIND_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isBlind() <em>Blind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBlind()
	 * @generated
	 * @ordered
	 */
	protected boolean blind = BLIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getSamplingFraction() <em>Sampling Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamplingFraction()
	 * @generated
	 * @ordered
	 */
	protected static final Double SAMPLING_FRACTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSamplingFraction() <em>Sampling Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSamplingFraction()
	 * @generated
	 * @ordered
	 */
	protected Double samplingFraction = SAMPLING_FRACTION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getClaims() <em>Claims</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClaims()
	 * @generated
	 * @ordered
	 */
	protected EList<Claim> claims;

	/**
	 * The cached value of the '{@link #getResidues() <em>Residues</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getResidues()
	 * @generated
	 * @ordered
	 */
	protected EList<ResidueMass> residues;

	/**
	 * The cached value of the '{@link #getAnalyses() <em>Analyses</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAnalyses()
	 * @generated
	 * @ordered
	 */
	protected EList<Analysis> analyses;

	/**
	 * The cached value of the '{@link #getFiles() <em>Files</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiles()
	 * @generated
	 * @ordered
	 */
	protected EList<DataFile> files;

	/**
	 * The cached value of the '{@link #getZones() <em>Zones</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getZones()
	 * @generated
	 * @ordered
	 */
	protected EList<WallZone> zones;

	/**
	 * The cached value of the '{@link #getSpread() <em>Spread</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpread()
	 * @generated
	 * @ordered
	 */
	protected EList<SpreadSquare> spread;

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
	protected SheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SHEET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Person getRecordedBy() {
		if (recordedBy != null && recordedBy.eIsProxy()) {
			InternalEObject oldRecordedBy = (InternalEObject)recordedBy;
			recordedBy = (Person)eResolveProxy(oldRecordedBy);
			if (recordedBy != oldRecordedBy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SHEET__RECORDED_BY, oldRecordedBy, recordedBy));
			}
		}
		return recordedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Person basicGetRecordedBy() {
		return recordedBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecordedBy(Person newRecordedBy) {
		Person oldRecordedBy = recordedBy;
		recordedBy = newRecordedBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHEET__RECORDED_BY, oldRecordedBy, recordedBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRecordedOn() {
		return recordedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecordedOn(String newRecordedOn) {
		String oldRecordedOn = recordedOn;
		recordedOn = newRecordedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHEET__RECORDED_ON, oldRecordedOn, recordedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBlind() {
		return blind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlind(boolean newBlind) {
		boolean oldBlind = blind;
		blind = newBlind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHEET__BLIND, oldBlind, blind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSamplingFraction() {
		return samplingFraction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSamplingFraction(Double newSamplingFraction) {
		Double oldSamplingFraction = samplingFraction;
		samplingFraction = newSamplingFraction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHEET__SAMPLING_FRACTION, oldSamplingFraction, samplingFraction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Claim> getClaims() {
		if (claims == null) {
			claims = new EObjectContainmentEList<Claim>(Claim.class, this, ModelPackage.SHEET__CLAIMS);
		}
		return claims;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ResidueMass> getResidues() {
		if (residues == null) {
			residues = new EObjectContainmentEList<ResidueMass>(ResidueMass.class, this, ModelPackage.SHEET__RESIDUES);
		}
		return residues;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Analysis> getAnalyses() {
		if (analyses == null) {
			analyses = new EObjectContainmentEList<Analysis>(Analysis.class, this, ModelPackage.SHEET__ANALYSES);
		}
		return analyses;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DataFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<DataFile>(DataFile.class, this, ModelPackage.SHEET__FILES);
		}
		return files;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<WallZone> getZones() {
		if (zones == null) {
			zones = new EObjectContainmentEList<WallZone>(WallZone.class, this, ModelPackage.SHEET__ZONES);
		}
		return zones;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SpreadSquare> getSpread() {
		if (spread == null) {
			spread = new EObjectContainmentEList<SpreadSquare>(SpreadSquare.class, this, ModelPackage.SHEET__SPREAD);
		}
		return spread;
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SHEET__BLINDLY, oldBlindly, blindly));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SHEET__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.SHEET__CLAIMS:
				return ((InternalEList<?>)getClaims()).basicRemove(otherEnd, msgs);
			case ModelPackage.SHEET__RESIDUES:
				return ((InternalEList<?>)getResidues()).basicRemove(otherEnd, msgs);
			case ModelPackage.SHEET__ANALYSES:
				return ((InternalEList<?>)getAnalyses()).basicRemove(otherEnd, msgs);
			case ModelPackage.SHEET__FILES:
				return ((InternalEList<?>)getFiles()).basicRemove(otherEnd, msgs);
			case ModelPackage.SHEET__ZONES:
				return ((InternalEList<?>)getZones()).basicRemove(otherEnd, msgs);
			case ModelPackage.SHEET__SPREAD:
				return ((InternalEList<?>)getSpread()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.SHEET__RECORDED_BY:
				if (resolve) return getRecordedBy();
				return basicGetRecordedBy();
			case ModelPackage.SHEET__RECORDED_ON:
				return getRecordedOn();
			case ModelPackage.SHEET__BLIND:
				return isBlind();
			case ModelPackage.SHEET__SAMPLING_FRACTION:
				return getSamplingFraction();
			case ModelPackage.SHEET__CLAIMS:
				return getClaims();
			case ModelPackage.SHEET__RESIDUES:
				return getResidues();
			case ModelPackage.SHEET__ANALYSES:
				return getAnalyses();
			case ModelPackage.SHEET__FILES:
				return getFiles();
			case ModelPackage.SHEET__ZONES:
				return getZones();
			case ModelPackage.SHEET__SPREAD:
				return getSpread();
			case ModelPackage.SHEET__BLINDLY:
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
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case ModelPackage.SHEET__RECORDED_BY:
				setRecordedBy((Person)newValue);
				return;
			case ModelPackage.SHEET__RECORDED_ON:
				setRecordedOn((String)newValue);
				return;
			case ModelPackage.SHEET__BLIND:
				setBlind((Boolean)newValue);
				return;
			case ModelPackage.SHEET__SAMPLING_FRACTION:
				setSamplingFraction((Double)newValue);
				return;
			case ModelPackage.SHEET__CLAIMS:
				getClaims().clear();
				getClaims().addAll((Collection<? extends Claim>)newValue);
				return;
			case ModelPackage.SHEET__RESIDUES:
				getResidues().clear();
				getResidues().addAll((Collection<? extends ResidueMass>)newValue);
				return;
			case ModelPackage.SHEET__ANALYSES:
				getAnalyses().clear();
				getAnalyses().addAll((Collection<? extends Analysis>)newValue);
				return;
			case ModelPackage.SHEET__FILES:
				getFiles().clear();
				getFiles().addAll((Collection<? extends DataFile>)newValue);
				return;
			case ModelPackage.SHEET__ZONES:
				getZones().clear();
				getZones().addAll((Collection<? extends WallZone>)newValue);
				return;
			case ModelPackage.SHEET__SPREAD:
				getSpread().clear();
				getSpread().addAll((Collection<? extends SpreadSquare>)newValue);
				return;
			case ModelPackage.SHEET__BLINDLY:
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
			case ModelPackage.SHEET__RECORDED_BY:
				setRecordedBy((Person)null);
				return;
			case ModelPackage.SHEET__RECORDED_ON:
				setRecordedOn(RECORDED_ON_EDEFAULT);
				return;
			case ModelPackage.SHEET__BLIND:
				setBlind(BLIND_EDEFAULT);
				return;
			case ModelPackage.SHEET__SAMPLING_FRACTION:
				setSamplingFraction(SAMPLING_FRACTION_EDEFAULT);
				return;
			case ModelPackage.SHEET__CLAIMS:
				getClaims().clear();
				return;
			case ModelPackage.SHEET__RESIDUES:
				getResidues().clear();
				return;
			case ModelPackage.SHEET__ANALYSES:
				getAnalyses().clear();
				return;
			case ModelPackage.SHEET__FILES:
				getFiles().clear();
				return;
			case ModelPackage.SHEET__ZONES:
				getZones().clear();
				return;
			case ModelPackage.SHEET__SPREAD:
				getSpread().clear();
				return;
			case ModelPackage.SHEET__BLINDLY:
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
			case ModelPackage.SHEET__RECORDED_BY:
				return recordedBy != null;
			case ModelPackage.SHEET__RECORDED_ON:
				return RECORDED_ON_EDEFAULT == null ? recordedOn != null : !RECORDED_ON_EDEFAULT.equals(recordedOn);
			case ModelPackage.SHEET__BLIND:
				return blind != BLIND_EDEFAULT;
			case ModelPackage.SHEET__SAMPLING_FRACTION:
				return SAMPLING_FRACTION_EDEFAULT == null ? samplingFraction != null : !SAMPLING_FRACTION_EDEFAULT.equals(samplingFraction);
			case ModelPackage.SHEET__CLAIMS:
				return claims != null && !claims.isEmpty();
			case ModelPackage.SHEET__RESIDUES:
				return residues != null && !residues.isEmpty();
			case ModelPackage.SHEET__ANALYSES:
				return analyses != null && !analyses.isEmpty();
			case ModelPackage.SHEET__FILES:
				return files != null && !files.isEmpty();
			case ModelPackage.SHEET__ZONES:
				return zones != null && !zones.isEmpty();
			case ModelPackage.SHEET__SPREAD:
				return spread != null && !spread.isEmpty();
			case ModelPackage.SHEET__BLINDLY:
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
		result.append(" (recordedOn: ");
		result.append(recordedOn);
		result.append(", blind: ");
		result.append(blind);
		result.append(", samplingFraction: ");
		result.append(samplingFraction);
		result.append(')');
		return result.toString();
	}

} //SheetImpl

/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.ModelPackage;

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
 * An implementation of the model object '<em><b>Data File</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.DataFileImpl#getPath <em>Path</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getBytes <em>Bytes</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getMediaType <em>Media Type</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getCapturedAt <em>Captured At</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getCaption <em>Caption</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getRights <em>Rights</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#isConsent <em>Consent</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getMeasurements <em>Measurements</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getClockOffset <em>Clock Offset</em>}</li>
 *   <li>{@link daubline.model.impl.DataFileImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DataFileImpl extends NamedImpl implements DataFile {
	/**
	 * The default value of the '{@link #getPath() <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected static final String PATH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected String path = PATH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected String sha256 = SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getBytes() <em>Bytes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBytes()
	 * @generated
	 * @ordered
	 */
	protected static final Long BYTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBytes() <em>Bytes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBytes()
	 * @generated
	 * @ordered
	 */
	protected Long bytes = BYTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getMediaType() <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediaType()
	 * @generated
	 * @ordered
	 */
	protected static final String MEDIA_TYPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMediaType() <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediaType()
	 * @generated
	 * @ordered
	 */
	protected String mediaType = MEDIA_TYPE_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final String KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected String kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getCapturedAt() <em>Captured At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapturedAt()
	 * @generated
	 * @ordered
	 */
	protected static final String CAPTURED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCapturedAt() <em>Captured At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapturedAt()
	 * @generated
	 * @ordered
	 */
	protected String capturedAt = CAPTURED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCaption() <em>Caption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCaption()
	 * @generated
	 * @ordered
	 */
	protected static final String CAPTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCaption() <em>Caption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCaption()
	 * @generated
	 * @ordered
	 */
	protected String caption = CAPTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getRights() <em>Rights</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRights()
	 * @generated
	 * @ordered
	 */
	protected static final String RIGHTS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRights() <em>Rights</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRights()
	 * @generated
	 * @ordered
	 */
	protected String rights = RIGHTS_EDEFAULT;

	/**
	 * The default value of the '{@link #isConsent() <em>Consent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isConsent()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CONSENT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isConsent() <em>Consent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isConsent()
	 * @generated
	 * @ordered
	 */
	protected boolean consent = CONSENT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMeasurements() <em>Measurements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasurements()
	 * @generated
	 * @ordered
	 */
	protected EList<Measurement> measurements;

	/**
	 * The default value of the '{@link #getClockOffset() <em>Clock Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClockOffset()
	 * @generated
	 * @ordered
	 */
	protected static final Double CLOCK_OFFSET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClockOffset() <em>Clock Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClockOffset()
	 * @generated
	 * @ordered
	 */
	protected Double clockOffset = CLOCK_OFFSET_EDEFAULT;

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
	protected DataFileImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.DATA_FILE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPath() {
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPath(String newPath) {
		String oldPath = path;
		path = newPath;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__PATH, oldPath, path));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSha256() {
		return sha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSha256(String newSha256) {
		String oldSha256 = sha256;
		sha256 = newSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Long getBytes() {
		return bytes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBytes(Long newBytes) {
		Long oldBytes = bytes;
		bytes = newBytes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__BYTES, oldBytes, bytes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMediaType() {
		return mediaType;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMediaType(String newMediaType) {
		String oldMediaType = mediaType;
		mediaType = newMediaType;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__MEDIA_TYPE, oldMediaType, mediaType));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(String newKind) {
		String oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCapturedAt() {
		return capturedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapturedAt(String newCapturedAt) {
		String oldCapturedAt = capturedAt;
		capturedAt = newCapturedAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__CAPTURED_AT, oldCapturedAt, capturedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCaption() {
		return caption;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCaption(String newCaption) {
		String oldCaption = caption;
		caption = newCaption;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__CAPTION, oldCaption, caption));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRights() {
		return rights;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRights(String newRights) {
		String oldRights = rights;
		rights = newRights;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__RIGHTS, oldRights, rights));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isConsent() {
		return consent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConsent(boolean newConsent) {
		boolean oldConsent = consent;
		consent = newConsent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__CONSENT, oldConsent, consent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Measurement> getMeasurements() {
		if (measurements == null) {
			measurements = new EObjectContainmentEList<Measurement>(Measurement.class, this, ModelPackage.DATA_FILE__MEASUREMENTS);
		}
		return measurements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getClockOffset() {
		return clockOffset;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClockOffset(Double newClockOffset) {
		Double oldClockOffset = clockOffset;
		clockOffset = newClockOffset;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__CLOCK_OFFSET, oldClockOffset, clockOffset));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.DATA_FILE__BLINDLY, oldBlindly, blindly));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.DATA_FILE__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.DATA_FILE__MEASUREMENTS:
				return ((InternalEList<?>)getMeasurements()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.DATA_FILE__PATH:
				return getPath();
			case ModelPackage.DATA_FILE__SHA256:
				return getSha256();
			case ModelPackage.DATA_FILE__BYTES:
				return getBytes();
			case ModelPackage.DATA_FILE__MEDIA_TYPE:
				return getMediaType();
			case ModelPackage.DATA_FILE__KIND:
				return getKind();
			case ModelPackage.DATA_FILE__CAPTURED_AT:
				return getCapturedAt();
			case ModelPackage.DATA_FILE__CAPTION:
				return getCaption();
			case ModelPackage.DATA_FILE__RIGHTS:
				return getRights();
			case ModelPackage.DATA_FILE__CONSENT:
				return isConsent();
			case ModelPackage.DATA_FILE__MEASUREMENTS:
				return getMeasurements();
			case ModelPackage.DATA_FILE__CLOCK_OFFSET:
				return getClockOffset();
			case ModelPackage.DATA_FILE__BLINDLY:
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
			case ModelPackage.DATA_FILE__PATH:
				setPath((String)newValue);
				return;
			case ModelPackage.DATA_FILE__SHA256:
				setSha256((String)newValue);
				return;
			case ModelPackage.DATA_FILE__BYTES:
				setBytes((Long)newValue);
				return;
			case ModelPackage.DATA_FILE__MEDIA_TYPE:
				setMediaType((String)newValue);
				return;
			case ModelPackage.DATA_FILE__KIND:
				setKind((String)newValue);
				return;
			case ModelPackage.DATA_FILE__CAPTURED_AT:
				setCapturedAt((String)newValue);
				return;
			case ModelPackage.DATA_FILE__CAPTION:
				setCaption((String)newValue);
				return;
			case ModelPackage.DATA_FILE__RIGHTS:
				setRights((String)newValue);
				return;
			case ModelPackage.DATA_FILE__CONSENT:
				setConsent((Boolean)newValue);
				return;
			case ModelPackage.DATA_FILE__MEASUREMENTS:
				getMeasurements().clear();
				getMeasurements().addAll((Collection<? extends Measurement>)newValue);
				return;
			case ModelPackage.DATA_FILE__CLOCK_OFFSET:
				setClockOffset((Double)newValue);
				return;
			case ModelPackage.DATA_FILE__BLINDLY:
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
			case ModelPackage.DATA_FILE__PATH:
				setPath(PATH_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__BYTES:
				setBytes(BYTES_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__MEDIA_TYPE:
				setMediaType(MEDIA_TYPE_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__CAPTURED_AT:
				setCapturedAt(CAPTURED_AT_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__CAPTION:
				setCaption(CAPTION_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__RIGHTS:
				setRights(RIGHTS_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__CONSENT:
				setConsent(CONSENT_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__MEASUREMENTS:
				getMeasurements().clear();
				return;
			case ModelPackage.DATA_FILE__CLOCK_OFFSET:
				setClockOffset(CLOCK_OFFSET_EDEFAULT);
				return;
			case ModelPackage.DATA_FILE__BLINDLY:
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
			case ModelPackage.DATA_FILE__PATH:
				return PATH_EDEFAULT == null ? path != null : !PATH_EDEFAULT.equals(path);
			case ModelPackage.DATA_FILE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case ModelPackage.DATA_FILE__BYTES:
				return BYTES_EDEFAULT == null ? bytes != null : !BYTES_EDEFAULT.equals(bytes);
			case ModelPackage.DATA_FILE__MEDIA_TYPE:
				return MEDIA_TYPE_EDEFAULT == null ? mediaType != null : !MEDIA_TYPE_EDEFAULT.equals(mediaType);
			case ModelPackage.DATA_FILE__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case ModelPackage.DATA_FILE__CAPTURED_AT:
				return CAPTURED_AT_EDEFAULT == null ? capturedAt != null : !CAPTURED_AT_EDEFAULT.equals(capturedAt);
			case ModelPackage.DATA_FILE__CAPTION:
				return CAPTION_EDEFAULT == null ? caption != null : !CAPTION_EDEFAULT.equals(caption);
			case ModelPackage.DATA_FILE__RIGHTS:
				return RIGHTS_EDEFAULT == null ? rights != null : !RIGHTS_EDEFAULT.equals(rights);
			case ModelPackage.DATA_FILE__CONSENT:
				return consent != CONSENT_EDEFAULT;
			case ModelPackage.DATA_FILE__MEASUREMENTS:
				return measurements != null && !measurements.isEmpty();
			case ModelPackage.DATA_FILE__CLOCK_OFFSET:
				return CLOCK_OFFSET_EDEFAULT == null ? clockOffset != null : !CLOCK_OFFSET_EDEFAULT.equals(clockOffset);
			case ModelPackage.DATA_FILE__BLINDLY:
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
		result.append(" (path: ");
		result.append(path);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", bytes: ");
		result.append(bytes);
		result.append(", mediaType: ");
		result.append(mediaType);
		result.append(", kind: ");
		result.append(kind);
		result.append(", capturedAt: ");
		result.append(capturedAt);
		result.append(", caption: ");
		result.append(caption);
		result.append(", rights: ");
		result.append(rights);
		result.append(", consent: ");
		result.append(consent);
		result.append(", clockOffset: ");
		result.append(clockOffset);
		result.append(')');
		return result.toString();
	}

} //DataFileImpl

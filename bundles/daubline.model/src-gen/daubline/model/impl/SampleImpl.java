/**
 */
package daubline.model.impl;

import daubline.base.Material;

import daubline.model.BlindRecording;
import daubline.model.ModelPackage;
import daubline.model.Piece;
import daubline.model.Sample;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sample</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.SampleImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.impl.SampleImpl#getQuestion <em>Question</em>}</li>
 *   <li>{@link daubline.model.impl.SampleImpl#getPiece <em>Piece</em>}</li>
 *   <li>{@link daubline.model.impl.SampleImpl#getTakenOn <em>Taken On</em>}</li>
 *   <li>{@link daubline.model.impl.SampleImpl#getStoredAt <em>Stored At</em>}</li>
 *   <li>{@link daubline.model.impl.SampleImpl#getHolder <em>Holder</em>}</li>
 *   <li>{@link daubline.model.impl.SampleImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SampleImpl extends NamedImpl implements Sample {
	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final Material MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected Material material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected static final String QUESTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuestion() <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuestion()
	 * @generated
	 * @ordered
	 */
	protected String question = QUESTION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPiece() <em>Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPiece()
	 * @generated
	 * @ordered
	 */
	protected Piece piece;

	/**
	 * The default value of the '{@link #getTakenOn() <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakenOn()
	 * @generated
	 * @ordered
	 */
	protected static final String TAKEN_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTakenOn() <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTakenOn()
	 * @generated
	 * @ordered
	 */
	protected String takenOn = TAKEN_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getStoredAt() <em>Stored At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoredAt()
	 * @generated
	 * @ordered
	 */
	protected static final String STORED_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStoredAt() <em>Stored At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStoredAt()
	 * @generated
	 * @ordered
	 */
	protected String storedAt = STORED_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHolder() <em>Holder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHolder()
	 * @generated
	 * @ordered
	 */
	protected static final String HOLDER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHolder() <em>Holder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHolder()
	 * @generated
	 * @ordered
	 */
	protected String holder = HOLDER_EDEFAULT;

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
	protected SampleImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.SAMPLE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Material getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(Material newMaterial) {
		Material oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuestion() {
		return question;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuestion(String newQuestion) {
		String oldQuestion = question;
		question = newQuestion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__QUESTION, oldQuestion, question));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece getPiece() {
		if (piece != null && piece.eIsProxy()) {
			InternalEObject oldPiece = (InternalEObject)piece;
			piece = (Piece)eResolveProxy(oldPiece);
			if (piece != oldPiece) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SAMPLE__PIECE, oldPiece, piece));
			}
		}
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Piece basicGetPiece() {
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPiece(Piece newPiece) {
		Piece oldPiece = piece;
		piece = newPiece;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__PIECE, oldPiece, piece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTakenOn() {
		return takenOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTakenOn(String newTakenOn) {
		String oldTakenOn = takenOn;
		takenOn = newTakenOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__TAKEN_ON, oldTakenOn, takenOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStoredAt() {
		return storedAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStoredAt(String newStoredAt) {
		String oldStoredAt = storedAt;
		storedAt = newStoredAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__STORED_AT, oldStoredAt, storedAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getHolder() {
		return holder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHolder(String newHolder) {
		String oldHolder = holder;
		holder = newHolder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__HOLDER, oldHolder, holder));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.SAMPLE__BLINDLY, oldBlindly, blindly));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SAMPLE__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case ModelPackage.SAMPLE__MATERIAL:
				return getMaterial();
			case ModelPackage.SAMPLE__QUESTION:
				return getQuestion();
			case ModelPackage.SAMPLE__PIECE:
				if (resolve) return getPiece();
				return basicGetPiece();
			case ModelPackage.SAMPLE__TAKEN_ON:
				return getTakenOn();
			case ModelPackage.SAMPLE__STORED_AT:
				return getStoredAt();
			case ModelPackage.SAMPLE__HOLDER:
				return getHolder();
			case ModelPackage.SAMPLE__BLINDLY:
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
			case ModelPackage.SAMPLE__MATERIAL:
				setMaterial((Material)newValue);
				return;
			case ModelPackage.SAMPLE__QUESTION:
				setQuestion((String)newValue);
				return;
			case ModelPackage.SAMPLE__PIECE:
				setPiece((Piece)newValue);
				return;
			case ModelPackage.SAMPLE__TAKEN_ON:
				setTakenOn((String)newValue);
				return;
			case ModelPackage.SAMPLE__STORED_AT:
				setStoredAt((String)newValue);
				return;
			case ModelPackage.SAMPLE__HOLDER:
				setHolder((String)newValue);
				return;
			case ModelPackage.SAMPLE__BLINDLY:
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
			case ModelPackage.SAMPLE__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case ModelPackage.SAMPLE__QUESTION:
				setQuestion(QUESTION_EDEFAULT);
				return;
			case ModelPackage.SAMPLE__PIECE:
				setPiece((Piece)null);
				return;
			case ModelPackage.SAMPLE__TAKEN_ON:
				setTakenOn(TAKEN_ON_EDEFAULT);
				return;
			case ModelPackage.SAMPLE__STORED_AT:
				setStoredAt(STORED_AT_EDEFAULT);
				return;
			case ModelPackage.SAMPLE__HOLDER:
				setHolder(HOLDER_EDEFAULT);
				return;
			case ModelPackage.SAMPLE__BLINDLY:
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
			case ModelPackage.SAMPLE__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case ModelPackage.SAMPLE__QUESTION:
				return QUESTION_EDEFAULT == null ? question != null : !QUESTION_EDEFAULT.equals(question);
			case ModelPackage.SAMPLE__PIECE:
				return piece != null;
			case ModelPackage.SAMPLE__TAKEN_ON:
				return TAKEN_ON_EDEFAULT == null ? takenOn != null : !TAKEN_ON_EDEFAULT.equals(takenOn);
			case ModelPackage.SAMPLE__STORED_AT:
				return STORED_AT_EDEFAULT == null ? storedAt != null : !STORED_AT_EDEFAULT.equals(storedAt);
			case ModelPackage.SAMPLE__HOLDER:
				return HOLDER_EDEFAULT == null ? holder != null : !HOLDER_EDEFAULT.equals(holder);
			case ModelPackage.SAMPLE__BLINDLY:
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
		result.append(" (material: ");
		result.append(material);
		result.append(", question: ");
		result.append(question);
		result.append(", takenOn: ");
		result.append(takenOn);
		result.append(", storedAt: ");
		result.append(storedAt);
		result.append(", holder: ");
		result.append(holder);
		result.append(')');
		return result.toString();
	}

} //SampleImpl

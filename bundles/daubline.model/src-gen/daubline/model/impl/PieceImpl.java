/**
 */
package daubline.model.impl;

import daubline.model.BlindRecording;
import daubline.model.ModelPackage;
import daubline.model.Piece;
import daubline.model.Reading;

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
 * An implementation of the model object '<em><b>Piece</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.impl.PieceImpl#getStage <em>Stage</em>}</li>
 *   <li>{@link daubline.model.impl.PieceImpl#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.impl.PieceImpl#getPieces <em>Pieces</em>}</li>
 *   <li>{@link daubline.model.impl.PieceImpl#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PieceImpl extends NamedImpl implements Piece {
	/**
	 * The default value of the '{@link #getStage() <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStage()
	 * @generated
	 * @ordered
	 */
	protected static final String STAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStage() <em>Stage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStage()
	 * @generated
	 * @ordered
	 */
	protected String stage = STAGE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getValues() <em>Values</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValues()
	 * @generated
	 * @ordered
	 */
	protected EList<Reading> values;

	/**
	 * The cached value of the '{@link #getPieces() <em>Pieces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> pieces;

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
	protected PieceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return ModelPackage.Literals.PIECE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStage() {
		return stage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStage(String newStage) {
		String oldStage = stage;
		stage = newStage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PIECE__STAGE, oldStage, stage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Reading> getValues() {
		if (values == null) {
			values = new EObjectContainmentEList<Reading>(Reading.class, this, ModelPackage.PIECE__VALUES);
		}
		return values;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getPieces() {
		if (pieces == null) {
			pieces = new EObjectContainmentEList<Piece>(Piece.class, this, ModelPackage.PIECE__PIECES);
		}
		return pieces;
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, ModelPackage.PIECE__BLINDLY, oldBlindly, blindly));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PIECE__BLINDLY, oldBlindly, blindly));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case ModelPackage.PIECE__VALUES:
				return ((InternalEList<?>)getValues()).basicRemove(otherEnd, msgs);
			case ModelPackage.PIECE__PIECES:
				return ((InternalEList<?>)getPieces()).basicRemove(otherEnd, msgs);
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
			case ModelPackage.PIECE__STAGE:
				return getStage();
			case ModelPackage.PIECE__VALUES:
				return getValues();
			case ModelPackage.PIECE__PIECES:
				return getPieces();
			case ModelPackage.PIECE__BLINDLY:
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
			case ModelPackage.PIECE__STAGE:
				setStage((String)newValue);
				return;
			case ModelPackage.PIECE__VALUES:
				getValues().clear();
				getValues().addAll((Collection<? extends Reading>)newValue);
				return;
			case ModelPackage.PIECE__PIECES:
				getPieces().clear();
				getPieces().addAll((Collection<? extends Piece>)newValue);
				return;
			case ModelPackage.PIECE__BLINDLY:
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
			case ModelPackage.PIECE__STAGE:
				setStage(STAGE_EDEFAULT);
				return;
			case ModelPackage.PIECE__VALUES:
				getValues().clear();
				return;
			case ModelPackage.PIECE__PIECES:
				getPieces().clear();
				return;
			case ModelPackage.PIECE__BLINDLY:
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
			case ModelPackage.PIECE__STAGE:
				return STAGE_EDEFAULT == null ? stage != null : !STAGE_EDEFAULT.equals(stage);
			case ModelPackage.PIECE__VALUES:
				return values != null && !values.isEmpty();
			case ModelPackage.PIECE__PIECES:
				return pieces != null && !pieces.isEmpty();
			case ModelPackage.PIECE__BLINDLY:
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
		result.append(" (stage: ");
		result.append(stage);
		result.append(')');
		return result.toString();
	}

} //PieceImpl

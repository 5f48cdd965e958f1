/**
 */
package daubline.model;

import daubline.base.Material;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sample</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was taken, where it is and what is asked of it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Sample#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.Sample#getQuestion <em>Question</em>}</li>
 *   <li>{@link daubline.model.Sample#getPiece <em>Piece</em>}</li>
 *   <li>{@link daubline.model.Sample#getTakenOn <em>Taken On</em>}</li>
 *   <li>{@link daubline.model.Sample#getStoredAt <em>Stored At</em>}</li>
 *   <li>{@link daubline.model.Sample#getHolder <em>Holder</em>}</li>
 *   <li>{@link daubline.model.Sample#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getSample()
 * @model
 * @generated
 */
public interface Sample extends Named {
	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(Material)
	 * @see daubline.model.ModelPackage#getSample_Material()
	 * @model dataType="daubline.model.Material"
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Question</em>' attribute.
	 * @see #setQuestion(String)
	 * @see daubline.model.ModelPackage#getSample_Question()
	 * @model
	 * @generated
	 */
	String getQuestion();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getQuestion <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Question</em>' attribute.
	 * @see #getQuestion()
	 * @generated
	 */
	void setQuestion(String value);

	/**
	 * Returns the value of the '<em><b>Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece</em>' reference.
	 * @see #setPiece(Piece)
	 * @see daubline.model.ModelPackage#getSample_Piece()
	 * @model
	 * @generated
	 */
	Piece getPiece();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getPiece <em>Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece</em>' reference.
	 * @see #getPiece()
	 * @generated
	 */
	void setPiece(Piece value);

	/**
	 * Returns the value of the '<em><b>Taken On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Taken On</em>' attribute.
	 * @see #setTakenOn(String)
	 * @see daubline.model.ModelPackage#getSample_TakenOn()
	 * @model
	 * @generated
	 */
	String getTakenOn();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getTakenOn <em>Taken On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Taken On</em>' attribute.
	 * @see #getTakenOn()
	 * @generated
	 */
	void setTakenOn(String value);

	/**
	 * Returns the value of the '<em><b>Stored At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stored At</em>' attribute.
	 * @see #setStoredAt(String)
	 * @see daubline.model.ModelPackage#getSample_StoredAt()
	 * @model
	 * @generated
	 */
	String getStoredAt();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getStoredAt <em>Stored At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stored At</em>' attribute.
	 * @see #getStoredAt()
	 * @generated
	 */
	void setStoredAt(String value);

	/**
	 * Returns the value of the '<em><b>Holder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Holder</em>' attribute.
	 * @see #setHolder(String)
	 * @see daubline.model.ModelPackage#getSample_Holder()
	 * @model
	 * @generated
	 */
	String getHolder();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getHolder <em>Holder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Holder</em>' attribute.
	 * @see #getHolder()
	 * @generated
	 */
	void setHolder(String value);

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getSample_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.Sample#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // Sample

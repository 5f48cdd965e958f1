/**
 */
package daubline.model;

import daubline.base.Basis;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Choice</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One choice of a reconstruction with what it rests on.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Choice#getBasis <em>Basis</em>}</li>
 *   <li>{@link daubline.model.Choice#getBecause <em>Because</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getChoice()
 * @model
 * @generated
 */
public interface Choice extends Reading {
	/**
	 * Returns the value of the '<em><b>Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Basis</em>' attribute.
	 * @see #setBasis(Basis)
	 * @see daubline.model.ModelPackage#getChoice_Basis()
	 * @model dataType="daubline.model.Basis"
	 * @generated
	 */
	Basis getBasis();

	/**
	 * Sets the value of the '{@link daubline.model.Choice#getBasis <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Basis</em>' attribute.
	 * @see #getBasis()
	 * @generated
	 */
	void setBasis(Basis value);

	/**
	 * Returns the value of the '<em><b>Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Because</em>' attribute.
	 * @see #setBecause(String)
	 * @see daubline.model.ModelPackage#getChoice_Because()
	 * @model
	 * @generated
	 */
	String getBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Choice#getBecause <em>Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Because</em>' attribute.
	 * @see #getBecause()
	 * @generated
	 */
	void setBecause(String value);

} // Choice

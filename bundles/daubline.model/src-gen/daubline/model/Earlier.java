/**
 */
package daubline.model;

import daubline.base.ValueKind;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Earlier</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a value was before it was changed: as typed, in canonical units, who had recorded it, until when it stood and by which change it went.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Earlier#getTyped <em>Typed</em>}</li>
 *   <li>{@link daubline.model.Earlier#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.Earlier#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.Earlier#getValue <em>Value</em>}</li>
 *   <li>{@link daubline.model.Earlier#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.Earlier#getUntil <em>Until</em>}</li>
 *   <li>{@link daubline.model.Earlier#getChange <em>Change</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getEarlier()
 * @model
 * @generated
 */
public interface Earlier extends Identified {
	/**
	 * Returns the value of the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Typed</em>' attribute.
	 * @see #setTyped(String)
	 * @see daubline.model.ModelPackage#getEarlier_Typed()
	 * @model
	 * @generated
	 */
	String getTyped();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getTyped <em>Typed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Typed</em>' attribute.
	 * @see #getTyped()
	 * @generated
	 */
	void setTyped(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see daubline.model.ModelPackage#getEarlier_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(ValueKind)
	 * @see daubline.model.ModelPackage#getEarlier_Kind()
	 * @model dataType="daubline.model.ValueKind"
	 * @generated
	 */
	ValueKind getKind();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ValueKind value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Double)
	 * @see daubline.model.ModelPackage#getEarlier_Value()
	 * @model
	 * @generated
	 */
	Double getValue();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Double value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' reference.
	 * @see #setBy(Person)
	 * @see daubline.model.ModelPackage#getEarlier_By()
	 * @model
	 * @generated
	 */
	Person getBy();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getBy <em>By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' reference.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(Person value);

	/**
	 * Returns the value of the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Until</em>' attribute.
	 * @see #setUntil(String)
	 * @see daubline.model.ModelPackage#getEarlier_Until()
	 * @model
	 * @generated
	 */
	String getUntil();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getUntil <em>Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Until</em>' attribute.
	 * @see #getUntil()
	 * @generated
	 */
	void setUntil(String value);

	/**
	 * Returns the value of the '<em><b>Change</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Change</em>' attribute.
	 * @see #setChange(String)
	 * @see daubline.model.ModelPackage#getEarlier_Change()
	 * @model
	 * @generated
	 */
	String getChange();

	/**
	 * Sets the value of the '{@link daubline.model.Earlier#getChange <em>Change</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Change</em>' attribute.
	 * @see #getChange()
	 * @generated
	 */
	void setChange(String value);

} // Earlier

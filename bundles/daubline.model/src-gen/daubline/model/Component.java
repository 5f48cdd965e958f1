/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Component</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One oxide or element of an analysis; the symbol is its formula as printed, or the one that was asked for, and then printedAs holds what the laboratory printed and the factor.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Component#getSymbol <em>Symbol</em>}</li>
 *   <li>{@link daubline.model.Component#getPrintedAs <em>Printed As</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getComponent()
 * @model
 * @generated
 */
public interface Component extends Reading {
	/**
	 * Returns the value of the '<em><b>Symbol</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Symbol</em>' attribute.
	 * @see #setSymbol(String)
	 * @see daubline.model.ModelPackage#getComponent_Symbol()
	 * @model
	 * @generated
	 */
	String getSymbol();

	/**
	 * Sets the value of the '{@link daubline.model.Component#getSymbol <em>Symbol</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Symbol</em>' attribute.
	 * @see #getSymbol()
	 * @generated
	 */
	void setSymbol(String value);

	/**
	 * Returns the value of the '<em><b>Printed As</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Printed As</em>' attribute.
	 * @see #setPrintedAs(String)
	 * @see daubline.model.ModelPackage#getComponent_PrintedAs()
	 * @model
	 * @generated
	 */
	String getPrintedAs();

	/**
	 * Sets the value of the '{@link daubline.model.Component#getPrintedAs <em>Printed As</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Printed As</em>' attribute.
	 * @see #getPrintedAs()
	 * @generated
	 */
	void setPrintedAs(String value);

} // Component

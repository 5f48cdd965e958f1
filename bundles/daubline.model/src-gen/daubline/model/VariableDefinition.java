/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Variable Definition</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A variable that the user added to the catalogue.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.VariableDefinition#getName <em>Name</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getGroup <em>Group</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getType <em>Type</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getLow <em>Low</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getHigh <em>High</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getStages <em>Stages</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getCategories <em>Categories</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getEvidencedBy <em>Evidenced By</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getMeaning <em>Meaning</em>}</li>
 *   <li>{@link daubline.model.VariableDefinition#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getVariableDefinition()
 * @model
 * @generated
 */
public interface VariableDefinition extends Identified {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Group</em>' attribute.
	 * @see #setGroup(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Group()
	 * @model
	 * @generated
	 */
	String getGroup();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getGroup <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group</em>' attribute.
	 * @see #getGroup()
	 * @generated
	 */
	void setGroup(String value);

	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see #setType(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Type()
	 * @model
	 * @generated
	 */
	String getType();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see #getType()
	 * @generated
	 */
	void setType(String value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Quantity()
	 * @model
	 * @generated
	 */
	String getQuantity();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Double)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Low()
	 * @model
	 * @generated
	 */
	Double getLow();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(Double value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Double)
	 * @see daubline.model.ModelPackage#getVariableDefinition_High()
	 * @model
	 * @generated
	 */
	Double getHigh();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Double value);

	/**
	 * Returns the value of the '<em><b>Stages</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stages</em>' attribute.
	 * @see #setStages(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Stages()
	 * @model
	 * @generated
	 */
	String getStages();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getStages <em>Stages</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stages</em>' attribute.
	 * @see #getStages()
	 * @generated
	 */
	void setStages(String value);

	/**
	 * Returns the value of the '<em><b>Categories</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Categories</em>' attribute.
	 * @see #setCategories(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Categories()
	 * @model
	 * @generated
	 */
	String getCategories();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getCategories <em>Categories</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Categories</em>' attribute.
	 * @see #getCategories()
	 * @generated
	 */
	void setCategories(String value);

	/**
	 * Returns the value of the '<em><b>Evidenced By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Evidenced By</em>' attribute.
	 * @see #setEvidencedBy(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_EvidencedBy()
	 * @model
	 * @generated
	 */
	String getEvidencedBy();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getEvidencedBy <em>Evidenced By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Evidenced By</em>' attribute.
	 * @see #getEvidencedBy()
	 * @generated
	 */
	void setEvidencedBy(String value);

	/**
	 * Returns the value of the '<em><b>Meaning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Meaning</em>' attribute.
	 * @see #setMeaning(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Meaning()
	 * @model
	 * @generated
	 */
	String getMeaning();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getMeaning <em>Meaning</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Meaning</em>' attribute.
	 * @see #getMeaning()
	 * @generated
	 */
	void setMeaning(String value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see daubline.model.ModelPackage#getVariableDefinition_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link daubline.model.VariableDefinition#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // VariableDefinition

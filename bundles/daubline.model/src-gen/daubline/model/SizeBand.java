/**
 */
package daubline.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Size Band</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The mass that a sieving gave between two meshes, in metres; the fines have no lower mesh. The lot is where it was put.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.SizeBand#getMeshFrom <em>Mesh From</em>}</li>
 *   <li>{@link daubline.model.SizeBand#getMeshTo <em>Mesh To</em>}</li>
 *   <li>{@link daubline.model.SizeBand#getLot <em>Lot</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getSizeBand()
 * @model
 * @generated
 */
public interface SizeBand extends Reading {
	/**
	 * Returns the value of the '<em><b>Mesh From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mesh From</em>' attribute.
	 * @see #setMeshFrom(Double)
	 * @see daubline.model.ModelPackage#getSizeBand_MeshFrom()
	 * @model
	 * @generated
	 */
	Double getMeshFrom();

	/**
	 * Sets the value of the '{@link daubline.model.SizeBand#getMeshFrom <em>Mesh From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh From</em>' attribute.
	 * @see #getMeshFrom()
	 * @generated
	 */
	void setMeshFrom(Double value);

	/**
	 * Returns the value of the '<em><b>Mesh To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mesh To</em>' attribute.
	 * @see #setMeshTo(Double)
	 * @see daubline.model.ModelPackage#getSizeBand_MeshTo()
	 * @model
	 * @generated
	 */
	Double getMeshTo();

	/**
	 * Sets the value of the '{@link daubline.model.SizeBand#getMeshTo <em>Mesh To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh To</em>' attribute.
	 * @see #getMeshTo()
	 * @generated
	 */
	void setMeshTo(Double value);

	/**
	 * Returns the value of the '<em><b>Lot</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lot</em>' reference.
	 * @see #setLot(Lot)
	 * @see daubline.model.ModelPackage#getSizeBand_Lot()
	 * @model
	 * @generated
	 */
	Lot getLot();

	/**
	 * Sets the value of the '{@link daubline.model.SizeBand#getLot <em>Lot</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' reference.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(Lot value);

} // SizeBand

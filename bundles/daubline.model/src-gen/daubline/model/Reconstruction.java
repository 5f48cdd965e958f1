/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reconstruction</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A hypothesis of what stood on the base that was found.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Reconstruction#getHypothesis <em>Hypothesis</em>}</li>
 *   <li>{@link daubline.model.Reconstruction#getVariantOf <em>Variant Of</em>}</li>
 *   <li>{@link daubline.model.Reconstruction#getSheets <em>Sheets</em>}</li>
 *   <li>{@link daubline.model.Reconstruction#isRetired <em>Retired</em>}</li>
 *   <li>{@link daubline.model.Reconstruction#getRetiredBecause <em>Retired Because</em>}</li>
 *   <li>{@link daubline.model.Reconstruction#getChoices <em>Choices</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getReconstruction()
 * @model
 * @generated
 */
public interface Reconstruction extends Named {
	/**
	 * Returns the value of the '<em><b>Hypothesis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hypothesis</em>' attribute.
	 * @see #setHypothesis(String)
	 * @see daubline.model.ModelPackage#getReconstruction_Hypothesis()
	 * @model
	 * @generated
	 */
	String getHypothesis();

	/**
	 * Sets the value of the '{@link daubline.model.Reconstruction#getHypothesis <em>Hypothesis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hypothesis</em>' attribute.
	 * @see #getHypothesis()
	 * @generated
	 */
	void setHypothesis(String value);

	/**
	 * Returns the value of the '<em><b>Variant Of</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Variant Of</em>' reference.
	 * @see #setVariantOf(Reconstruction)
	 * @see daubline.model.ModelPackage#getReconstruction_VariantOf()
	 * @model
	 * @generated
	 */
	Reconstruction getVariantOf();

	/**
	 * Sets the value of the '{@link daubline.model.Reconstruction#getVariantOf <em>Variant Of</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Variant Of</em>' reference.
	 * @see #getVariantOf()
	 * @generated
	 */
	void setVariantOf(Reconstruction value);

	/**
	 * Returns the value of the '<em><b>Sheets</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.EvidenceSheet}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheets</em>' reference list.
	 * @see daubline.model.ModelPackage#getReconstruction_Sheets()
	 * @model
	 * @generated
	 */
	EList<EvidenceSheet> getSheets();

	/**
	 * Returns the value of the '<em><b>Retired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Retired</em>' attribute.
	 * @see #setRetired(boolean)
	 * @see daubline.model.ModelPackage#getReconstruction_Retired()
	 * @model
	 * @generated
	 */
	boolean isRetired();

	/**
	 * Sets the value of the '{@link daubline.model.Reconstruction#isRetired <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Retired</em>' attribute.
	 * @see #isRetired()
	 * @generated
	 */
	void setRetired(boolean value);

	/**
	 * Returns the value of the '<em><b>Retired Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Retired Because</em>' attribute.
	 * @see #setRetiredBecause(String)
	 * @see daubline.model.ModelPackage#getReconstruction_RetiredBecause()
	 * @model
	 * @generated
	 */
	String getRetiredBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Reconstruction#getRetiredBecause <em>Retired Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Retired Because</em>' attribute.
	 * @see #getRetiredBecause()
	 * @generated
	 */
	void setRetiredBecause(String value);

	/**
	 * Returns the value of the '<em><b>Choices</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Choice}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Choices</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getReconstruction_Choices()
	 * @model containment="true"
	 * @generated
	 */
	EList<Choice> getChoices();

} // Reconstruction

/**
 */
package daubline.model;

import daubline.base.IronBasis;
import daubline.base.Material;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Analysis</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One chemical analysis as the laboratory or the author printed it. Repeated measurements of one sample have the same replicate.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Analysis#getSample <em>Sample</em>}</li>
 *   <li>{@link daubline.model.Analysis#getMaterial <em>Material</em>}</li>
 *   <li>{@link daubline.model.Analysis#getSpecimen <em>Specimen</em>}</li>
 *   <li>{@link daubline.model.Analysis#getMethod <em>Method</em>}</li>
 *   <li>{@link daubline.model.Analysis#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link daubline.model.Analysis#getStandards <em>Standards</em>}</li>
 *   <li>{@link daubline.model.Analysis#getConditions <em>Conditions</em>}</li>
 *   <li>{@link daubline.model.Analysis#getAccuracy <em>Accuracy</em>}</li>
 *   <li>{@link daubline.model.Analysis#getLaboratory <em>Laboratory</em>}</li>
 *   <li>{@link daubline.model.Analysis#getOn <em>On</em>}</li>
 *   <li>{@link daubline.model.Analysis#getAreas <em>Areas</em>}</li>
 *   <li>{@link daubline.model.Analysis#getIronBasis <em>Iron Basis</em>}</li>
 *   <li>{@link daubline.model.Analysis#getReplicate <em>Replicate</em>}</li>
 *   <li>{@link daubline.model.Analysis#getTotalTyped <em>Total Typed</em>}</li>
 *   <li>{@link daubline.model.Analysis#getTotal <em>Total</em>}</li>
 *   <li>{@link daubline.model.Analysis#getCitation <em>Citation</em>}</li>
 *   <li>{@link daubline.model.Analysis#getPage <em>Page</em>}</li>
 *   <li>{@link daubline.model.Analysis#getFile <em>File</em>}</li>
 *   <li>{@link daubline.model.Analysis#getComponents <em>Components</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getAnalysis()
 * @model
 * @generated
 */
public interface Analysis extends Named {
	/**
	 * Returns the value of the '<em><b>Sample</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sample</em>' reference.
	 * @see #setSample(Sample)
	 * @see daubline.model.ModelPackage#getAnalysis_Sample()
	 * @model
	 * @generated
	 */
	Sample getSample();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getSample <em>Sample</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sample</em>' reference.
	 * @see #getSample()
	 * @generated
	 */
	void setSample(Sample value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see #setMaterial(Material)
	 * @see daubline.model.ModelPackage#getAnalysis_Material()
	 * @model dataType="daubline.model.Material"
	 * @generated
	 */
	Material getMaterial();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(Material value);

	/**
	 * Returns the value of the '<em><b>Specimen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Specimen</em>' attribute.
	 * @see #setSpecimen(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Specimen()
	 * @model
	 * @generated
	 */
	String getSpecimen();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getSpecimen <em>Specimen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Specimen</em>' attribute.
	 * @see #getSpecimen()
	 * @generated
	 */
	void setSpecimen(String value);

	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see #setMethod(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Method()
	 * @model
	 * @generated
	 */
	String getMethod();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(String value);

	/**
	 * Returns the value of the '<em><b>Instrument</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instrument</em>' attribute.
	 * @see #setInstrument(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Instrument()
	 * @model
	 * @generated
	 */
	String getInstrument();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getInstrument <em>Instrument</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instrument</em>' attribute.
	 * @see #getInstrument()
	 * @generated
	 */
	void setInstrument(String value);

	/**
	 * Returns the value of the '<em><b>Standards</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Standards</em>' attribute.
	 * @see #setStandards(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Standards()
	 * @model
	 * @generated
	 */
	String getStandards();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getStandards <em>Standards</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Standards</em>' attribute.
	 * @see #getStandards()
	 * @generated
	 */
	void setStandards(String value);

	/**
	 * Returns the value of the '<em><b>Conditions</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Conditions</em>' attribute.
	 * @see #setConditions(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Conditions()
	 * @model
	 * @generated
	 */
	String getConditions();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getConditions <em>Conditions</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Conditions</em>' attribute.
	 * @see #getConditions()
	 * @generated
	 */
	void setConditions(String value);

	/**
	 * Returns the value of the '<em><b>Accuracy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Accuracy</em>' attribute.
	 * @see #setAccuracy(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Accuracy()
	 * @model
	 * @generated
	 */
	String getAccuracy();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getAccuracy <em>Accuracy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Accuracy</em>' attribute.
	 * @see #getAccuracy()
	 * @generated
	 */
	void setAccuracy(String value);

	/**
	 * Returns the value of the '<em><b>Laboratory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Laboratory</em>' attribute.
	 * @see #setLaboratory(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Laboratory()
	 * @model
	 * @generated
	 */
	String getLaboratory();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getLaboratory <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Laboratory</em>' attribute.
	 * @see #getLaboratory()
	 * @generated
	 */
	void setLaboratory(String value);

	/**
	 * Returns the value of the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On</em>' attribute.
	 * @see #setOn(String)
	 * @see daubline.model.ModelPackage#getAnalysis_On()
	 * @model
	 * @generated
	 */
	String getOn();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getOn <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On</em>' attribute.
	 * @see #getOn()
	 * @generated
	 */
	void setOn(String value);

	/**
	 * Returns the value of the '<em><b>Areas</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Areas</em>' attribute.
	 * @see #setAreas(Integer)
	 * @see daubline.model.ModelPackage#getAnalysis_Areas()
	 * @model
	 * @generated
	 */
	Integer getAreas();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getAreas <em>Areas</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Areas</em>' attribute.
	 * @see #getAreas()
	 * @generated
	 */
	void setAreas(Integer value);

	/**
	 * Returns the value of the '<em><b>Iron Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Iron Basis</em>' attribute.
	 * @see #setIronBasis(IronBasis)
	 * @see daubline.model.ModelPackage#getAnalysis_IronBasis()
	 * @model dataType="daubline.model.IronBasis"
	 * @generated
	 */
	IronBasis getIronBasis();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getIronBasis <em>Iron Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Iron Basis</em>' attribute.
	 * @see #getIronBasis()
	 * @generated
	 */
	void setIronBasis(IronBasis value);

	/**
	 * Returns the value of the '<em><b>Replicate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Replicate</em>' attribute.
	 * @see #setReplicate(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Replicate()
	 * @model
	 * @generated
	 */
	String getReplicate();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getReplicate <em>Replicate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Replicate</em>' attribute.
	 * @see #getReplicate()
	 * @generated
	 */
	void setReplicate(String value);

	/**
	 * Returns the value of the '<em><b>Total Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Total Typed</em>' attribute.
	 * @see #setTotalTyped(String)
	 * @see daubline.model.ModelPackage#getAnalysis_TotalTyped()
	 * @model
	 * @generated
	 */
	String getTotalTyped();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getTotalTyped <em>Total Typed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Total Typed</em>' attribute.
	 * @see #getTotalTyped()
	 * @generated
	 */
	void setTotalTyped(String value);

	/**
	 * Returns the value of the '<em><b>Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Total</em>' attribute.
	 * @see #setTotal(Double)
	 * @see daubline.model.ModelPackage#getAnalysis_Total()
	 * @model
	 * @generated
	 */
	Double getTotal();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getTotal <em>Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Total</em>' attribute.
	 * @see #getTotal()
	 * @generated
	 */
	void setTotal(Double value);

	/**
	 * Returns the value of the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Citation</em>' reference.
	 * @see #setCitation(Citation)
	 * @see daubline.model.ModelPackage#getAnalysis_Citation()
	 * @model
	 * @generated
	 */
	Citation getCitation();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getCitation <em>Citation</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Citation</em>' reference.
	 * @see #getCitation()
	 * @generated
	 */
	void setCitation(Citation value);

	/**
	 * Returns the value of the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Page</em>' attribute.
	 * @see #setPage(String)
	 * @see daubline.model.ModelPackage#getAnalysis_Page()
	 * @model
	 * @generated
	 */
	String getPage();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getPage <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Page</em>' attribute.
	 * @see #getPage()
	 * @generated
	 */
	void setPage(String value);

	/**
	 * Returns the value of the '<em><b>File</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>File</em>' reference.
	 * @see #setFile(DataFile)
	 * @see daubline.model.ModelPackage#getAnalysis_File()
	 * @model
	 * @generated
	 */
	DataFile getFile();

	/**
	 * Sets the value of the '{@link daubline.model.Analysis#getFile <em>File</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' reference.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(DataFile value);

	/**
	 * Returns the value of the '<em><b>Components</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Component}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Components</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getAnalysis_Components()
	 * @model containment="true"
	 * @generated
	 */
	EList<Component> getComponents();

} // Analysis

/**
 */
package daubline.model;

import daubline.base.Confidence;
import daubline.base.HowGot;
import daubline.base.ValueKind;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One value as typed, its canonical form, how it was got and where it comes from.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Reading#getVariable <em>Variable</em>}</li>
 *   <li>{@link daubline.model.Reading#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.Reading#getTyped <em>Typed</em>}</li>
 *   <li>{@link daubline.model.Reading#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.Reading#getValue <em>Value</em>}</li>
 *   <li>{@link daubline.model.Reading#getLow <em>Low</em>}</li>
 *   <li>{@link daubline.model.Reading#getHigh <em>High</em>}</li>
 *   <li>{@link daubline.model.Reading#getSigma <em>Sigma</em>}</li>
 *   <li>{@link daubline.model.Reading#getCategory <em>Category</em>}</li>
 *   <li>{@link daubline.model.Reading#getHow <em>How</em>}</li>
 *   <li>{@link daubline.model.Reading#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.Reading#getAt <em>At</em>}</li>
 *   <li>{@link daubline.model.Reading#getCitation <em>Citation</em>}</li>
 *   <li>{@link daubline.model.Reading#getPage <em>Page</em>}</li>
 *   <li>{@link daubline.model.Reading#getVerbatim <em>Verbatim</em>}</li>
 *   <li>{@link daubline.model.Reading#getConfidence <em>Confidence</em>}</li>
 *   <li>{@link daubline.model.Reading#getSamplingFraction <em>Sampling Fraction</em>}</li>
 *   <li>{@link daubline.model.Reading#isPicked <em>Picked</em>}</li>
 *   <li>{@link daubline.model.Reading#getPickedBecause <em>Picked Because</em>}</li>
 *   <li>{@link daubline.model.Reading#getNote <em>Note</em>}</li>
 *   <li>{@link daubline.model.Reading#getEarlier <em>Earlier</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getReading()
 * @model
 * @generated
 */
public interface Reading extends Identified {
	/**
	 * Returns the value of the '<em><b>Variable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Variable</em>' attribute.
	 * @see #setVariable(String)
	 * @see daubline.model.ModelPackage#getReading_Variable()
	 * @model
	 * @generated
	 */
	String getVariable();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getVariable <em>Variable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Variable</em>' attribute.
	 * @see #getVariable()
	 * @generated
	 */
	void setVariable(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(ValueKind)
	 * @see daubline.model.ModelPackage#getReading_Kind()
	 * @model dataType="daubline.model.ValueKind"
	 * @generated
	 */
	ValueKind getKind();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ValueKind value);

	/**
	 * Returns the value of the '<em><b>Typed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Typed</em>' attribute.
	 * @see #setTyped(String)
	 * @see daubline.model.ModelPackage#getReading_Typed()
	 * @model
	 * @generated
	 */
	String getTyped();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getTyped <em>Typed</em>}' attribute.
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
	 * @see daubline.model.ModelPackage#getReading_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Double)
	 * @see daubline.model.ModelPackage#getReading_Value()
	 * @model
	 * @generated
	 */
	Double getValue();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Double value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Double)
	 * @see daubline.model.ModelPackage#getReading_Low()
	 * @model
	 * @generated
	 */
	Double getLow();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getLow <em>Low</em>}' attribute.
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
	 * @see daubline.model.ModelPackage#getReading_High()
	 * @model
	 * @generated
	 */
	Double getHigh();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Double value);

	/**
	 * Returns the value of the '<em><b>Sigma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sigma</em>' attribute.
	 * @see #setSigma(Double)
	 * @see daubline.model.ModelPackage#getReading_Sigma()
	 * @model
	 * @generated
	 */
	Double getSigma();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getSigma <em>Sigma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sigma</em>' attribute.
	 * @see #getSigma()
	 * @generated
	 */
	void setSigma(Double value);

	/**
	 * Returns the value of the '<em><b>Category</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Category</em>' attribute.
	 * @see #setCategory(String)
	 * @see daubline.model.ModelPackage#getReading_Category()
	 * @model
	 * @generated
	 */
	String getCategory();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getCategory <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Category</em>' attribute.
	 * @see #getCategory()
	 * @generated
	 */
	void setCategory(String value);

	/**
	 * Returns the value of the '<em><b>How</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>How</em>' attribute.
	 * @see #setHow(HowGot)
	 * @see daubline.model.ModelPackage#getReading_How()
	 * @model dataType="daubline.model.HowGot"
	 * @generated
	 */
	HowGot getHow();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getHow <em>How</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>How</em>' attribute.
	 * @see #getHow()
	 * @generated
	 */
	void setHow(HowGot value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' reference.
	 * @see #setBy(Person)
	 * @see daubline.model.ModelPackage#getReading_By()
	 * @model
	 * @generated
	 */
	Person getBy();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getBy <em>By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' reference.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(Person value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(String)
	 * @see daubline.model.ModelPackage#getReading_At()
	 * @model
	 * @generated
	 */
	String getAt();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(String value);

	/**
	 * Returns the value of the '<em><b>Citation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Citation</em>' reference.
	 * @see #setCitation(Citation)
	 * @see daubline.model.ModelPackage#getReading_Citation()
	 * @model
	 * @generated
	 */
	Citation getCitation();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getCitation <em>Citation</em>}' reference.
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
	 * @see daubline.model.ModelPackage#getReading_Page()
	 * @model
	 * @generated
	 */
	String getPage();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getPage <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Page</em>' attribute.
	 * @see #getPage()
	 * @generated
	 */
	void setPage(String value);

	/**
	 * Returns the value of the '<em><b>Verbatim</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Verbatim</em>' attribute.
	 * @see #setVerbatim(String)
	 * @see daubline.model.ModelPackage#getReading_Verbatim()
	 * @model
	 * @generated
	 */
	String getVerbatim();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getVerbatim <em>Verbatim</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Verbatim</em>' attribute.
	 * @see #getVerbatim()
	 * @generated
	 */
	void setVerbatim(String value);

	/**
	 * Returns the value of the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Confidence</em>' attribute.
	 * @see #setConfidence(Confidence)
	 * @see daubline.model.ModelPackage#getReading_Confidence()
	 * @model dataType="daubline.model.Confidence"
	 * @generated
	 */
	Confidence getConfidence();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getConfidence <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Confidence</em>' attribute.
	 * @see #getConfidence()
	 * @generated
	 */
	void setConfidence(Confidence value);

	/**
	 * Returns the value of the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sampling Fraction</em>' attribute.
	 * @see #setSamplingFraction(Double)
	 * @see daubline.model.ModelPackage#getReading_SamplingFraction()
	 * @model
	 * @generated
	 */
	Double getSamplingFraction();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getSamplingFraction <em>Sampling Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sampling Fraction</em>' attribute.
	 * @see #getSamplingFraction()
	 * @generated
	 */
	void setSamplingFraction(Double value);

	/**
	 * Returns the value of the '<em><b>Picked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Picked</em>' attribute.
	 * @see #setPicked(boolean)
	 * @see daubline.model.ModelPackage#getReading_Picked()
	 * @model
	 * @generated
	 */
	boolean isPicked();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#isPicked <em>Picked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Picked</em>' attribute.
	 * @see #isPicked()
	 * @generated
	 */
	void setPicked(boolean value);

	/**
	 * Returns the value of the '<em><b>Picked Because</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Picked Because</em>' attribute.
	 * @see #setPickedBecause(String)
	 * @see daubline.model.ModelPackage#getReading_PickedBecause()
	 * @model
	 * @generated
	 */
	String getPickedBecause();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getPickedBecause <em>Picked Because</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Picked Because</em>' attribute.
	 * @see #getPickedBecause()
	 * @generated
	 */
	void setPickedBecause(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see daubline.model.ModelPackage#getReading_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link daubline.model.Reading#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Earlier</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Earlier}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Earlier</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getReading_Earlier()
	 * @model containment="true"
	 * @generated
	 */
	EList<Earlier> getEarlier();

} // Reading

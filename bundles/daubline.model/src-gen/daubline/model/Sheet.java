/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What remains of one furnace, excavated or experimental: the same fields for both.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Sheet#getRecordedBy <em>Recorded By</em>}</li>
 *   <li>{@link daubline.model.Sheet#getRecordedOn <em>Recorded On</em>}</li>
 *   <li>{@link daubline.model.Sheet#isBlind <em>Blind</em>}</li>
 *   <li>{@link daubline.model.Sheet#getSamplingFraction <em>Sampling Fraction</em>}</li>
 *   <li>{@link daubline.model.Sheet#getClaims <em>Claims</em>}</li>
 *   <li>{@link daubline.model.Sheet#getResidues <em>Residues</em>}</li>
 *   <li>{@link daubline.model.Sheet#getAnalyses <em>Analyses</em>}</li>
 *   <li>{@link daubline.model.Sheet#getFiles <em>Files</em>}</li>
 *   <li>{@link daubline.model.Sheet#getZones <em>Zones</em>}</li>
 *   <li>{@link daubline.model.Sheet#getSpread <em>Spread</em>}</li>
 *   <li>{@link daubline.model.Sheet#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getSheet()
 * @model abstract="true"
 * @generated
 */
public interface Sheet extends Named {
	/**
	 * Returns the value of the '<em><b>Recorded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recorded By</em>' reference.
	 * @see #setRecordedBy(Person)
	 * @see daubline.model.ModelPackage#getSheet_RecordedBy()
	 * @model
	 * @generated
	 */
	Person getRecordedBy();

	/**
	 * Sets the value of the '{@link daubline.model.Sheet#getRecordedBy <em>Recorded By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recorded By</em>' reference.
	 * @see #getRecordedBy()
	 * @generated
	 */
	void setRecordedBy(Person value);

	/**
	 * Returns the value of the '<em><b>Recorded On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recorded On</em>' attribute.
	 * @see #setRecordedOn(String)
	 * @see daubline.model.ModelPackage#getSheet_RecordedOn()
	 * @model
	 * @generated
	 */
	String getRecordedOn();

	/**
	 * Sets the value of the '{@link daubline.model.Sheet#getRecordedOn <em>Recorded On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recorded On</em>' attribute.
	 * @see #getRecordedOn()
	 * @generated
	 */
	void setRecordedOn(String value);

	/**
	 * Returns the value of the '<em><b>Blind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blind</em>' attribute.
	 * @see #setBlind(boolean)
	 * @see daubline.model.ModelPackage#getSheet_Blind()
	 * @model
	 * @generated
	 */
	boolean isBlind();

	/**
	 * Sets the value of the '{@link daubline.model.Sheet#isBlind <em>Blind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blind</em>' attribute.
	 * @see #isBlind()
	 * @generated
	 */
	void setBlind(boolean value);

	/**
	 * Returns the value of the '<em><b>Sampling Fraction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sampling Fraction</em>' attribute.
	 * @see #setSamplingFraction(Double)
	 * @see daubline.model.ModelPackage#getSheet_SamplingFraction()
	 * @model
	 * @generated
	 */
	Double getSamplingFraction();

	/**
	 * Sets the value of the '{@link daubline.model.Sheet#getSamplingFraction <em>Sampling Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sampling Fraction</em>' attribute.
	 * @see #getSamplingFraction()
	 * @generated
	 */
	void setSamplingFraction(Double value);

	/**
	 * Returns the value of the '<em><b>Claims</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Claim}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Claims</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSheet_Claims()
	 * @model containment="true"
	 * @generated
	 */
	EList<Claim> getClaims();

	/**
	 * Returns the value of the '<em><b>Residues</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.ResidueMass}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Residues</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSheet_Residues()
	 * @model containment="true"
	 * @generated
	 */
	EList<ResidueMass> getResidues();

	/**
	 * Returns the value of the '<em><b>Analyses</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Analysis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Analyses</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSheet_Analyses()
	 * @model containment="true"
	 * @generated
	 */
	EList<Analysis> getAnalyses();

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.DataFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSheet_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<DataFile> getFiles();

	/**
	 * Returns the value of the '<em><b>Zones</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.WallZone}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Zones</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSheet_Zones()
	 * @model containment="true"
	 * @generated
	 */
	EList<WallZone> getZones();

	/**
	 * Returns the value of the '<em><b>Spread</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.SpreadSquare}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Spread</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getSheet_Spread()
	 * @model containment="true"
	 * @generated
	 */
	EList<SpreadSquare> getSpread();

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getSheet_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.Sheet#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // Sheet

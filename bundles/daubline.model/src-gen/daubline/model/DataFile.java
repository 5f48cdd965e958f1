/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Data File</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A file of the study kept as delivered, by relative path and checksum.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.DataFile#getPath <em>Path</em>}</li>
 *   <li>{@link daubline.model.DataFile#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link daubline.model.DataFile#getBytes <em>Bytes</em>}</li>
 *   <li>{@link daubline.model.DataFile#getMediaType <em>Media Type</em>}</li>
 *   <li>{@link daubline.model.DataFile#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.DataFile#getCapturedAt <em>Captured At</em>}</li>
 *   <li>{@link daubline.model.DataFile#getCaption <em>Caption</em>}</li>
 *   <li>{@link daubline.model.DataFile#getRights <em>Rights</em>}</li>
 *   <li>{@link daubline.model.DataFile#isConsent <em>Consent</em>}</li>
 *   <li>{@link daubline.model.DataFile#getMeasurements <em>Measurements</em>}</li>
 *   <li>{@link daubline.model.DataFile#getClockOffset <em>Clock Offset</em>}</li>
 *   <li>{@link daubline.model.DataFile#getBlindly <em>Blindly</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getDataFile()
 * @model
 * @generated
 */
public interface DataFile extends Named {
	/**
	 * Returns the value of the '<em><b>Path</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Path</em>' attribute.
	 * @see #setPath(String)
	 * @see daubline.model.ModelPackage#getDataFile_Path()
	 * @model
	 * @generated
	 */
	String getPath();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getPath <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path</em>' attribute.
	 * @see #getPath()
	 * @generated
	 */
	void setPath(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see daubline.model.ModelPackage#getDataFile_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Bytes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bytes</em>' attribute.
	 * @see #setBytes(Long)
	 * @see daubline.model.ModelPackage#getDataFile_Bytes()
	 * @model
	 * @generated
	 */
	Long getBytes();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getBytes <em>Bytes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bytes</em>' attribute.
	 * @see #getBytes()
	 * @generated
	 */
	void setBytes(Long value);

	/**
	 * Returns the value of the '<em><b>Media Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Media Type</em>' attribute.
	 * @see #setMediaType(String)
	 * @see daubline.model.ModelPackage#getDataFile_MediaType()
	 * @model
	 * @generated
	 */
	String getMediaType();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getMediaType <em>Media Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Media Type</em>' attribute.
	 * @see #getMediaType()
	 * @generated
	 */
	void setMediaType(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see daubline.model.ModelPackage#getDataFile_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Captured At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Captured At</em>' attribute.
	 * @see #setCapturedAt(String)
	 * @see daubline.model.ModelPackage#getDataFile_CapturedAt()
	 * @model
	 * @generated
	 */
	String getCapturedAt();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getCapturedAt <em>Captured At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Captured At</em>' attribute.
	 * @see #getCapturedAt()
	 * @generated
	 */
	void setCapturedAt(String value);

	/**
	 * Returns the value of the '<em><b>Caption</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Caption</em>' attribute.
	 * @see #setCaption(String)
	 * @see daubline.model.ModelPackage#getDataFile_Caption()
	 * @model
	 * @generated
	 */
	String getCaption();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getCaption <em>Caption</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Caption</em>' attribute.
	 * @see #getCaption()
	 * @generated
	 */
	void setCaption(String value);

	/**
	 * Returns the value of the '<em><b>Rights</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rights</em>' attribute.
	 * @see #setRights(String)
	 * @see daubline.model.ModelPackage#getDataFile_Rights()
	 * @model
	 * @generated
	 */
	String getRights();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getRights <em>Rights</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rights</em>' attribute.
	 * @see #getRights()
	 * @generated
	 */
	void setRights(String value);

	/**
	 * Returns the value of the '<em><b>Consent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Consent</em>' attribute.
	 * @see #setConsent(boolean)
	 * @see daubline.model.ModelPackage#getDataFile_Consent()
	 * @model
	 * @generated
	 */
	boolean isConsent();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#isConsent <em>Consent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Consent</em>' attribute.
	 * @see #isConsent()
	 * @generated
	 */
	void setConsent(boolean value);

	/**
	 * Returns the value of the '<em><b>Measurements</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Measurement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measurements</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getDataFile_Measurements()
	 * @model containment="true"
	 * @generated
	 */
	EList<Measurement> getMeasurements();

	/**
	 * Returns the value of the '<em><b>Clock Offset</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clock Offset</em>' attribute.
	 * @see #setClockOffset(Double)
	 * @see daubline.model.ModelPackage#getDataFile_ClockOffset()
	 * @model
	 * @generated
	 */
	Double getClockOffset();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getClockOffset <em>Clock Offset</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clock Offset</em>' attribute.
	 * @see #getClockOffset()
	 * @generated
	 */
	void setClockOffset(Double value);

	/**
	 * Returns the value of the '<em><b>Blindly</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Blindly</em>' reference.
	 * @see #setBlindly(BlindRecording)
	 * @see daubline.model.ModelPackage#getDataFile_Blindly()
	 * @model
	 * @generated
	 */
	BlindRecording getBlindly();

	/**
	 * Sets the value of the '{@link daubline.model.DataFile#getBlindly <em>Blindly</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blindly</em>' reference.
	 * @see #getBlindly()
	 * @generated
	 */
	void setBlindly(BlindRecording value);

} // DataFile

/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Log Entry</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One line of the run log.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.LogEntry#getAt <em>At</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getElapsed <em>Elapsed</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getKind <em>Kind</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getText <em>Text</em>}</li>
 *   <li>{@link daubline.model.LogEntry#isAbout <em>About</em>}</li>
 *   <li>{@link daubline.model.LogEntry#isLate <em>Late</em>}</li>
 *   <li>{@link daubline.model.LogEntry#isInferred <em>Inferred</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getOriginal <em>Original</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getBy <em>By</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getValues <em>Values</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getIllegible <em>Illegible</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getCheckedBy <em>Checked By</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getCheckedOn <em>Checked On</em>}</li>
 *   <li>{@link daubline.model.LogEntry#getScan <em>Scan</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getLogEntry()
 * @model
 * @generated
 */
public interface LogEntry extends Identified {
	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(String)
	 * @see daubline.model.ModelPackage#getLogEntry_At()
	 * @model
	 * @generated
	 */
	String getAt();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(String value);

	/**
	 * Returns the value of the '<em><b>Elapsed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elapsed</em>' attribute.
	 * @see #setElapsed(Double)
	 * @see daubline.model.ModelPackage#getLogEntry_Elapsed()
	 * @model
	 * @generated
	 */
	Double getElapsed();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getElapsed <em>Elapsed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elapsed</em>' attribute.
	 * @see #getElapsed()
	 * @generated
	 */
	void setElapsed(Double value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see daubline.model.ModelPackage#getLogEntry_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see daubline.model.ModelPackage#getLogEntry_Text()
	 * @model
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>About</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>About</em>' attribute.
	 * @see #setAbout(boolean)
	 * @see daubline.model.ModelPackage#getLogEntry_About()
	 * @model
	 * @generated
	 */
	boolean isAbout();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#isAbout <em>About</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>About</em>' attribute.
	 * @see #isAbout()
	 * @generated
	 */
	void setAbout(boolean value);

	/**
	 * Returns the value of the '<em><b>Late</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Late</em>' attribute.
	 * @see #setLate(boolean)
	 * @see daubline.model.ModelPackage#getLogEntry_Late()
	 * @model
	 * @generated
	 */
	boolean isLate();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#isLate <em>Late</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Late</em>' attribute.
	 * @see #isLate()
	 * @generated
	 */
	void setLate(boolean value);

	/**
	 * Returns the value of the '<em><b>Inferred</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inferred</em>' attribute.
	 * @see #setInferred(boolean)
	 * @see daubline.model.ModelPackage#getLogEntry_Inferred()
	 * @model
	 * @generated
	 */
	boolean isInferred();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#isInferred <em>Inferred</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inferred</em>' attribute.
	 * @see #isInferred()
	 * @generated
	 */
	void setInferred(boolean value);

	/**
	 * Returns the value of the '<em><b>Original</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Original</em>' attribute.
	 * @see #setOriginal(String)
	 * @see daubline.model.ModelPackage#getLogEntry_Original()
	 * @model
	 * @generated
	 */
	String getOriginal();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getOriginal <em>Original</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Original</em>' attribute.
	 * @see #getOriginal()
	 * @generated
	 */
	void setOriginal(String value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' reference.
	 * @see #setBy(Person)
	 * @see daubline.model.ModelPackage#getLogEntry_By()
	 * @model
	 * @generated
	 */
	Person getBy();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getBy <em>By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' reference.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(Person value);

	/**
	 * Returns the value of the '<em><b>Values</b></em>' containment reference list.
	 * The list contents are of type {@link daubline.model.Reading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Values</em>' containment reference list.
	 * @see daubline.model.ModelPackage#getLogEntry_Values()
	 * @model containment="true"
	 * @generated
	 */
	EList<Reading> getValues();

	/**
	 * Returns the value of the '<em><b>Illegible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Illegible</em>' attribute.
	 * @see #setIllegible(String)
	 * @see daubline.model.ModelPackage#getLogEntry_Illegible()
	 * @model
	 * @generated
	 */
	String getIllegible();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getIllegible <em>Illegible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Illegible</em>' attribute.
	 * @see #getIllegible()
	 * @generated
	 */
	void setIllegible(String value);

	/**
	 * Returns the value of the '<em><b>Checked By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Checked By</em>' reference.
	 * @see #setCheckedBy(Person)
	 * @see daubline.model.ModelPackage#getLogEntry_CheckedBy()
	 * @model
	 * @generated
	 */
	Person getCheckedBy();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getCheckedBy <em>Checked By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Checked By</em>' reference.
	 * @see #getCheckedBy()
	 * @generated
	 */
	void setCheckedBy(Person value);

	/**
	 * Returns the value of the '<em><b>Checked On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Checked On</em>' attribute.
	 * @see #setCheckedOn(String)
	 * @see daubline.model.ModelPackage#getLogEntry_CheckedOn()
	 * @model
	 * @generated
	 */
	String getCheckedOn();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getCheckedOn <em>Checked On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Checked On</em>' attribute.
	 * @see #getCheckedOn()
	 * @generated
	 */
	void setCheckedOn(String value);

	/**
	 * Returns the value of the '<em><b>Scan</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Scan</em>' reference.
	 * @see #setScan(DataFile)
	 * @see daubline.model.ModelPackage#getLogEntry_Scan()
	 * @model
	 * @generated
	 */
	DataFile getScan();

	/**
	 * Sets the value of the '{@link daubline.model.LogEntry#getScan <em>Scan</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scan</em>' reference.
	 * @see #getScan()
	 * @generated
	 */
	void setScan(DataFile value);

} // LogEntry

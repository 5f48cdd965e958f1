/**
 */
package daubline.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Provision</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something that trials use up, with what there is and what a trial, a new furnace and a refit take; all in one unit.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link daubline.model.Provision#getUnit <em>Unit</em>}</li>
 *   <li>{@link daubline.model.Provision#getAvailable <em>Available</em>}</li>
 *   <li>{@link daubline.model.Provision#getMoisture <em>Moisture</em>}</li>
 *   <li>{@link daubline.model.Provision#isDryBasis <em>Dry Basis</em>}</li>
 *   <li>{@link daubline.model.Provision#getLosses <em>Losses</em>}</li>
 *   <li>{@link daubline.model.Provision#getReserve <em>Reserve</em>}</li>
 *   <li>{@link daubline.model.Provision#getOnce <em>Once</em>}</li>
 *   <li>{@link daubline.model.Provision#getPerTrial <em>Per Trial</em>}</li>
 *   <li>{@link daubline.model.Provision#getPerFurnace <em>Per Furnace</em>}</li>
 *   <li>{@link daubline.model.Provision#getPerRefit <em>Per Refit</em>}</li>
 *   <li>{@link daubline.model.Provision#getLots <em>Lots</em>}</li>
 * </ul>
 *
 * @see daubline.model.ModelPackage#getProvision()
 * @model
 * @generated
 */
public interface Provision extends Named {
	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see daubline.model.ModelPackage#getProvision_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Available</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Available</em>' attribute.
	 * @see #setAvailable(Double)
	 * @see daubline.model.ModelPackage#getProvision_Available()
	 * @model
	 * @generated
	 */
	Double getAvailable();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getAvailable <em>Available</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Available</em>' attribute.
	 * @see #getAvailable()
	 * @generated
	 */
	void setAvailable(Double value);

	/**
	 * Returns the value of the '<em><b>Moisture</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Moisture</em>' attribute.
	 * @see #setMoisture(Double)
	 * @see daubline.model.ModelPackage#getProvision_Moisture()
	 * @model
	 * @generated
	 */
	Double getMoisture();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getMoisture <em>Moisture</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Moisture</em>' attribute.
	 * @see #getMoisture()
	 * @generated
	 */
	void setMoisture(Double value);

	/**
	 * Returns the value of the '<em><b>Dry Basis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dry Basis</em>' attribute.
	 * @see #setDryBasis(boolean)
	 * @see daubline.model.ModelPackage#getProvision_DryBasis()
	 * @model
	 * @generated
	 */
	boolean isDryBasis();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#isDryBasis <em>Dry Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Basis</em>' attribute.
	 * @see #isDryBasis()
	 * @generated
	 */
	void setDryBasis(boolean value);

	/**
	 * Returns the value of the '<em><b>Losses</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Losses</em>' attribute.
	 * @see #setLosses(String)
	 * @see daubline.model.ModelPackage#getProvision_Losses()
	 * @model
	 * @generated
	 */
	String getLosses();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getLosses <em>Losses</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Losses</em>' attribute.
	 * @see #getLosses()
	 * @generated
	 */
	void setLosses(String value);

	/**
	 * Returns the value of the '<em><b>Reserve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reserve</em>' attribute.
	 * @see #setReserve(Double)
	 * @see daubline.model.ModelPackage#getProvision_Reserve()
	 * @model
	 * @generated
	 */
	Double getReserve();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getReserve <em>Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reserve</em>' attribute.
	 * @see #getReserve()
	 * @generated
	 */
	void setReserve(Double value);

	/**
	 * Returns the value of the '<em><b>Once</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Once</em>' attribute.
	 * @see #setOnce(Double)
	 * @see daubline.model.ModelPackage#getProvision_Once()
	 * @model
	 * @generated
	 */
	Double getOnce();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getOnce <em>Once</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Once</em>' attribute.
	 * @see #getOnce()
	 * @generated
	 */
	void setOnce(Double value);

	/**
	 * Returns the value of the '<em><b>Per Trial</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Per Trial</em>' attribute.
	 * @see #setPerTrial(Double)
	 * @see daubline.model.ModelPackage#getProvision_PerTrial()
	 * @model
	 * @generated
	 */
	Double getPerTrial();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getPerTrial <em>Per Trial</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Per Trial</em>' attribute.
	 * @see #getPerTrial()
	 * @generated
	 */
	void setPerTrial(Double value);

	/**
	 * Returns the value of the '<em><b>Per Furnace</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Per Furnace</em>' attribute.
	 * @see #setPerFurnace(Double)
	 * @see daubline.model.ModelPackage#getProvision_PerFurnace()
	 * @model
	 * @generated
	 */
	Double getPerFurnace();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getPerFurnace <em>Per Furnace</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Per Furnace</em>' attribute.
	 * @see #getPerFurnace()
	 * @generated
	 */
	void setPerFurnace(Double value);

	/**
	 * Returns the value of the '<em><b>Per Refit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Per Refit</em>' attribute.
	 * @see #setPerRefit(Double)
	 * @see daubline.model.ModelPackage#getProvision_PerRefit()
	 * @model
	 * @generated
	 */
	Double getPerRefit();

	/**
	 * Sets the value of the '{@link daubline.model.Provision#getPerRefit <em>Per Refit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Per Refit</em>' attribute.
	 * @see #getPerRefit()
	 * @generated
	 */
	void setPerRefit(Double value);

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' reference list.
	 * The list contents are of type {@link daubline.model.Lot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lots</em>' reference list.
	 * @see daubline.model.ModelPackage#getProvision_Lots()
	 * @model
	 * @generated
	 */
	EList<Lot> getLots();

} // Provision

/** What a person prefers: units, decimal sign, language, colours. Preferences change what is shown, never what is stored. */
package daubline.ui.prefs;

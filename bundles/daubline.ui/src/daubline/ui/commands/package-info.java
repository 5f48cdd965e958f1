/** What the commands of menus, bars and keys do. */
package daubline.ui.commands;

/** Files of data loggers: how they are laid out, taking them into a trial, and reading them for charts. */
package daubline.intake.logger;

/** Who does what and when on the day, what can hurt, what is permitted, and whether a trial may be called ready. */
package daubline.session.team;

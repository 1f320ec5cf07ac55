/** Kind {@code speed}: how many targets of a row a second give one clean pulse each. */
package eddyreach.kinds.speed;

/** Switch and target joined over the air gap, on and off the axis; two switches beside each other. */
package eddyreach.field.join;

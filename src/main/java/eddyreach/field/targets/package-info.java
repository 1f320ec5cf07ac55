/** What a target reflects: meshed bodies, endless plates, balls, another switch, a target before a background. */
package eddyreach.field.targets;

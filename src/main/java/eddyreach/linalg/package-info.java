/** Complex symmetric sparse factorisation along a separator tree, and small dense complex algebra; knows no physics. */
package eddyreach.linalg;

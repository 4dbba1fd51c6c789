/** Where the water goes: what drives it, how much there is, and the ways it takes to the frame. */
package rainlap.water;

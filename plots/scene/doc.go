// Package scene is one drawing of shapes and words, which is written as SVG or as PDF.
//
// A [Scene] lies on its paper in millimetres, x to the right, y up. Both writers draw the same lines, areas,
// rings and words; words are set in Helvetica, which every reader of PDF has.
package scene

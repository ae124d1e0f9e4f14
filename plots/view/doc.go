// Package view draws a piece and its people to scale from the side: at rest in a [SideView], rocking in a
// [RockingView], and in a [LiveView] that a page leans, pulls at and lets go.
//
// A view has a named group for each part that moves, and carries the computed motion as samples; [Script] moves the
// groups along them.
package view

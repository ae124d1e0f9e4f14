package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// TestNoSwitchOnKind holds that a kind of piece is its row and its phrases: nowhere else is a kind named, compared or
// switched on.
func TestNoSwitchOnKind(t *testing.T) {
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		name, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		if name = filepath.ToSlash(name); strings.HasPrefix(name, "sim/piece/") || name == "cmd/internal/words/phrases.go" {
			return nil
		}
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, path, nil, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if entry, is := n.(*ast.KeyValueExpr); is && parts(entry.Value) {
				return false // a design of a kind is made
			}
			if call, is := n.(*ast.CallExpr); is && len(call.Args) == 1 && parts(call.Args[0]) {
				return false // a row of piece is asked for
			}
			if parts(n) {
				t.Errorf("%v: a kind is told from others; make it a trait in sim/piece or a phrase of words", set.Position(n.Pos()))
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// parts reports whether kinds of pieces are told apart at a node: where one is named, or one of the two ways of a
// cradle, or where that of a design is compared or switched on, itself or by its name.
func parts(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.SelectorExpr:
		room, is := n.X.(*ast.Ident)
		return is && room.Name == "piece" && slices.Contains([]string{"Chair", "Settee", "Cradle", "Horse", "Side", "End"}, n.Sel.Name)
	case *ast.BinaryExpr:
		return (n.Op == token.EQL || n.Op == token.NEQ) && (kindOfDesign(n.X) && !parts(n.Y) || kindOfDesign(n.Y) && !parts(n.X))
	case *ast.SwitchStmt:
		return kindOfDesign(n.Tag)
	}
	return false
}

// kindOfDesign reports whether an expression is the kind of a design: d.Kind, r.Design.Kind, its String(), or the
// Name of its Traits().
func kindOfDesign(x ast.Expr) bool {
	if name, is := x.(*ast.SelectorExpr); is && name.Sel.Name == "Name" {
		if call, is := name.X.(*ast.CallExpr); is {
			of, is := call.Fun.(*ast.SelectorExpr)
			return is && of.Sel.Name == "Traits"
		}
	}
	if call, is := x.(*ast.CallExpr); is {
		if of, is := call.Fun.(*ast.SelectorExpr); is && of.Sel.Name == "String" {
			x = of.X
		}
	}
	kind, is := x.(*ast.SelectorExpr)
	if !is || kind.Sel.Name != "Kind" {
		return false
	}
	switch of := kind.X.(type) {
	case *ast.Ident:
		return of.Name == "d" || of.Name == "design"
	case *ast.SelectorExpr:
		return of.Sel.Name == "Design"
	}
	return false
}

// TestTold holds what counts as telling kinds apart.
func TestTold(t *testing.T) {
	for text, want := range map[string]bool{
		"piece.Cradle":                      true,
		"d.Kind == other.Kind":              true,
		"r.Design.Kind != b.Design.Kind":    true,
		`d.Kind.String() == "horse"`:        true,
		"2 == d.Kind":                       true,
		"piece.End":                         true,
		`r.Design.Traits().Name == "horse"`: true,
		"piece.Laminated":                   false,
		"d.Traits().ForTwo":                 false,
		"m.Kind == quantity.Angle":          false,
		"d.Kind":                            false,
		"e.Kind == motion.Turns":            false,
	} {
		x, err := parser.ParseExpr(text)
		if err != nil {
			t.Fatal(err)
		}
		if got := parts(x); got != want {
			t.Errorf("%s: %v, want %v", text, got, want)
		}
	}
}

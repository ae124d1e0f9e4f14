package words

import (
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// formatting are the functions that may do arithmetic, and on what.
var formatting = map[string]string{
	"hundredths":  "a share in hundredths",
	"inDegrees":   "radians in degrees",
	"unsigned":    "a number without its sign, whose side is said in words",
	"thin":        "metres in inches or millimetres, finer than a rule reads",
	"sized":       "whether a size is one that a rule reads",
	"area":        "square metres in square inches or cm²",
	"bulk":        "cubic metres in litres",
	"whatIfTable": "how many rows a page has room for",
}

// TestComputesNothing: outside of these, no number is multiplied or divided, no float64 added to or subtracted from
// another, turned round or put through a function of package math but to ask whether it is a number; and all of these do.
func TestComputesNothing(t *testing.T) {
	files := token.NewFileSet()
	var room []*ast.File
	names, _ := filepath.Glob("*.go")
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(files, name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		room = append(room, file)
	}
	info := &types.Info{Types: map[ast.Expr]types.TypeAndValue{}, Uses: map[*ast.Ident]types.Object{}}
	if _, err := (&types.Config{Importer: compiled(t, files)}).Check("words", files, room, info); err != nil {
		t.Fatal(err)
	}
	computes := map[string]bool{}
	for _, file := range room {
		for _, declared := range file.Decls {
			where := ""
			if f, is := declared.(*ast.FuncDecl); is {
				where = f.Name.Name
			}
			ast.Inspect(declared, func(n ast.Node) bool {
				if what := arithmetic(n, info); what != "" {
					computes[where] = true
					if formatting[where] == "" {
						t.Errorf("%s: %s computes %s; the room of sim that owns the number does", files.Position(n.Pos()), where, what)
					}
				}
				return true
			})
		}
	}
	for name := range formatting {
		if !computes[name] {
			t.Errorf("%s is listed as formatting, and does no arithmetic", name)
		}
	}
}

// compiled imports packages as the go command has compiled them.
func compiled(t *testing.T, files *token.FileSet) types.Importer {
	t.Helper()
	list, err := exec.Command("go", "list", "-export", "-deps", "-f", "{{.ImportPath}}={{.Export}}", ".").Output()
	if err != nil {
		t.Fatal(err)
	}
	exported := map[string]string{}
	for line := range strings.Lines(string(list)) {
		path, file, _ := strings.Cut(strings.TrimSpace(line), "=")
		exported[path] = file
	}
	return importer.ForCompiler(files, "gc", func(path string) (io.ReadCloser, error) { return os.Open(exported[path]) })
}

// arithmetic returns what a node computes, "" where it computes nothing. A unit times a literal is a literal.
func arithmetic(n ast.Node, info *types.Info) string {
	is := func(e ast.Expr, wanted types.BasicInfo) bool {
		basic, simple := info.Types[e].Type.Underlying().(*types.Basic)
		return simple && basic.Info()&wanted != 0
	}
	of := func(e ast.Expr) (room string, f types.Object) {
		if selector, is := e.(*ast.SelectorExpr); is {
			if f = info.Uses[selector.Sel]; f != nil && f.Pkg() != nil {
				return f.Pkg().Path(), f
			}
		}
		return "", f
	}
	switch n := n.(type) {
	case *ast.BinaryExpr:
		if info.Types[n].Value != nil {
			for _, e := range []ast.Expr{n.X, n.Y} {
				if room, _ := of(e); room != "" && room != "rockerwright/sim/quantity" {
					return types.ExprString(n)
				}
			}
			return ""
		}
		adds, multiplies := n.Op == token.ADD || n.Op == token.SUB, n.Op == token.MUL || n.Op == token.QUO || n.Op == token.REM
		if adds && is(n, types.IsFloat) || multiplies && is(n, types.IsNumeric) {
			return types.ExprString(n)
		}
	case *ast.UnaryExpr:
		if n.Op == token.SUB && info.Types[n].Value == nil && is(n, types.IsFloat) {
			return types.ExprString(n)
		}
	case *ast.AssignStmt:
		if n.Tok != token.ASSIGN && n.Tok != token.DEFINE && is(n.Lhs[0], types.IsFloat) {
			return types.ExprString(n.Lhs[0]) + " " + n.Tok.String()
		}
	case *ast.IncDecStmt:
		if is(n.X, types.IsFloat) {
			return types.ExprString(n.X) + n.Tok.String()
		}
	case *ast.CallExpr:
		asks := map[string]bool{"IsNaN": true, "IsInf": true, "NaN": true, "Inf": true}
		if room, f := of(n.Fun); room == "math" && !asks[f.Name()] {
			return types.ExprString(n)
		}
		if name, plain := n.Fun.(*ast.Ident); plain && (name.Name == "min" || name.Name == "max") && is(n, types.IsFloat) {
			return types.ExprString(n)
		}
	}
	return ""
}

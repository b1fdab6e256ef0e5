package org.nestyear.checks.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/**
 * Finds the numbers written in a Java source. A few carry no meaning of their own (0, 1, 2, a half, hours, minutes,
 * per cent); every other one must be a named constant whose comment the caller accepts.
 *
 * @param loose numbers with their line that are not in such a constant
 * @param constants accepted constants by name
 */
record NumberScan(List<String> loose, List<String> constants) {
    private static final Set<Double> PLAIN = Set.of(0.0, 0.5, 1.0, 2.0, 10.0, 24.0, 60.0, 100.0);

    NumberScan {
        loose = List.copyOf(loose);
        constants = List.copyOf(constants);
    }

    /**
     * Scans one source.
     *
     * @param name file name for the report
     * @param source the Java text
     * @param modifiers what a constant must be, for instance private static final
     * @param accepts whether the comment above or beside a constant explains it
     */
    static NumberScan of(String name, String source, Set<Modifier> modifiers, Predicate<String> accepts) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavacTask task = (JavacTask)
                compiler.getTask(null, null, problem -> {}, List.of("-proc:none"), null, List.of(file(name, source)));
        List<String> loose = new ArrayList<>();
        List<String> constants = new ArrayList<>();
        try {
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                new Scanner(name, source, unit, positions, modifiers, accepts, loose, constants).scan(unit, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new NumberScan(loose, constants);
    }

    private static JavaFileObject file(String name, String source) {
        return new SimpleJavaFileObject(URI.create("string:///" + name), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source;
            }
        };
    }

    /** Walks the tree; parsing only, so nothing needs to compile. */
    private static final class Scanner extends TreeScanner<@Nullable Void, @Nullable Void> {
        private final String name;
        private final String source;
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final Set<Modifier> modifiers;
        private final Predicate<String> accepts;
        private final List<String> loose;
        private final List<String> constants;

        Scanner(
                String name,
                String source,
                CompilationUnitTree unit,
                SourcePositions positions,
                Set<Modifier> modifiers,
                Predicate<String> accepts,
                List<String> loose,
                List<String> constants) {
            this.name = name;
            this.source = source;
            this.unit = unit;
            this.positions = positions;
            this.modifiers = modifiers;
            this.accepts = accepts;
            this.loose = loose;
            this.constants = constants;
        }

        @Override
        public @Nullable Void visitVariable(VariableTree variable, @Nullable Void unused) {
            boolean constant = variable.getModifiers().getFlags().containsAll(modifiers);
            if (constant && accepts.test(commentOf(variable))) {
                constants.add(variable.getName().toString());
                return null;
            }
            return super.visitVariable(variable, null);
        }

        @Override
        public @Nullable Void visitLiteral(LiteralTree literal, @Nullable Void unused) {
            if (literal.getValue() instanceof Number number && !PLAIN.contains(Math.abs(number.doubleValue()))) {
                long line = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, literal));
                loose.add(name + " line " + line + ": " + literal);
            }
            return null;
        }

        /** The comment above a declaration, or after it on its last line. */
        private String commentOf(VariableTree variable) {
            int start = (int) positions.getStartPosition(unit, variable);
            int end = (int) positions.getEndPosition(unit, variable);
            int lineEnd = source.indexOf('\n', end);
            String after = source.substring(end, lineEnd < 0 ? source.length() : lineEnd);
            String before = source.substring(0, start).stripTrailing();
            StringBuilder comment = new StringBuilder();
            if (before.endsWith("*/")) {
                comment.append(before, before.lastIndexOf("/*"), before.length());
            } else {
                List<String> lines = before.lines().toList();
                for (int i = lines.size() - 1; i >= 0 && lines.get(i).strip().startsWith("//"); i--) {
                    comment.insert(0, lines.get(i).strip() + " ");
                }
            }
            int beside = after.indexOf("//");
            return comment + (beside < 0 ? "" : after.substring(beside));
        }
    }
}

package io.github.leafproof.dsl.bytecode;

import java.lang.invoke.MethodHandles;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Puts pieces of code one after another into methods, and methods into classes. The machine compiles no method of more than
 * 8 000 bytes, and compiles small ones sooner and better; a class holds no more than 65 535 constants.
 */
final class ClassWriting {

    /** A method ends behind the piece that makes it longer than this. */
    private static final int LONG_ENOUGH = 1_500;

    private static final int METHODS = 100;
    private static final int FLAGS = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC;
    private static final String NAME = Type.getInternalName(Program.class) + "$Compiled";
    private static final String ARGUMENTS =
            "(" + Type.getDescriptor(Figures.class) + Type.getDescriptor(Outcomes.class) + ")V";

    private final List<Written> classes = new ArrayList<>();
    private final int linesTaken;
    private int lines;
    private int longest;
    private @Nullable Written current;

    /**
     * No class yet.
     *
     * @param linesTaken how many lines of the slate keep what they hold from one piece to the next
     */
    ClassWriting(int linesTaken) {
        this.linesTaken = linesTaken;
        this.lines = linesTaken;
    }

    /** One piece more, which is written at once. It is run behind all that were added before it. */
    void add(Consumer<Code> piece) {
        Written to = current;
        if (to == null || to.methods == METHODS) {
            to = new Written();
            classes.add(to);
            current = to;
        }
        longest = Math.max(longest, to.add(piece));
    }

    /** The length of the longest method so far, in bytes. */
    int longest() {
        return longest;
    }

    /**
     * Makes the classes known to the machine.
     *
     * @param into where each of them is put as the machine reads it
     * @return what to run, in order
     */
    List<Program> define(List<byte[]> into) {
        List<Program> programs = new ArrayList<>();
        for (Written written : classes) {
            byte[] bytes = written.bytes();
            into.add(bytes);
            programs.add(defined(bytes, written.constants));
        }
        return programs;
    }

    private static Program defined(byte[] bytes, List<Object> constants) {
        try {
            MethodHandles.Lookup made =
                    MethodHandles.lookup().defineHiddenClassWithClassData(bytes, List.copyOf(constants), true);
            return (Program) made.lookupClass().getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException wrong) {
            throw new IllegalStateException("the code that was written is none", wrong);
        }
    }

    /** How many lines of the slate the code needs. */
    int lines() {
        return lines;
    }

    /** A class while it is written. */
    private final class Written {
        private final List<Object> constants = new ArrayList<>();
        private final ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected String getCommonSuperClass(String one, String other) {
                // Nothing that the code does asks for more of what comes from two ways.
                return "java/lang/Object";
            }
        };
        private int methods;
        private @Nullable MethodVisitor open;

        Written() {
            writer.visit(
                    Opcodes.V17,
                    Opcodes.ACC_FINAL | Opcodes.ACC_SYNTHETIC,
                    NAME,
                    null,
                    "java/lang/Object",
                    new String[] {Type.getInternalName(Program.class)});
            MethodVisitor constructor = writer.visitMethod(0, "<init>", "()V", null, null);
            constructor.visitCode();
            constructor.visitVarInsn(Opcodes.ALOAD, 0);
            constructor.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", "<init>", "()V", false);
            ended(constructor);
        }

        /** Tells how long the method is that it was added to. */
        int add(Consumer<Code> piece) {
            MethodVisitor method = open;
            if (method == null) {
                method = writer.visitMethod(FLAGS, "part" + methods, ARGUMENTS, null, null);
                method.visitCode();
                methods++;
                open = method;
            }
            Code code = new Code(method, constants, linesTaken);
            piece.accept(code);
            lines = Math.max(lines, code.lines());
            Label here = new Label();
            method.visitLabel(here);
            int length = here.getOffset() + 1;
            if (length > LONG_ENOUGH) {
                ended(method);
                open = null;
            }
            return length;
        }

        byte[] bytes() {
            if (open != null) {
                ended(open);
            }
            MethodVisitor run = writer.visitMethod(Opcodes.ACC_PUBLIC, "run", ARGUMENTS, null, null);
            run.visitCode();
            for (int part = 0; part < methods; part++) {
                run.visitVarInsn(Opcodes.ALOAD, 1);
                run.visitVarInsn(Opcodes.ALOAD, 2);
                run.visitMethodInsn(Opcodes.INVOKESTATIC, NAME, "part" + part, ARGUMENTS, false);
            }
            ended(run);
            writer.visitEnd();
            return writer.toByteArray();
        }

        private static void ended(MethodVisitor method) {
            method.visitInsn(Opcodes.RETURN);
            method.visitMaxs(0, 0);
            method.visitEnd();
        }
    }
}

package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.IntConsumer;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** The code of one method while it is written. Its first argument is the {@link Figures}, the second the {@link Outcomes}. */
final class Code {

    private static final int FIGURES = 0;
    private static final int OUTCOMES = 1;
    private static final Handle CLASS_DATA = new Handle(
            Opcodes.H_INVOKESTATIC,
            "java/lang/invoke/MethodHandles",
            "classDataAt",
            "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/Class;I)Ljava/lang/Object;",
            false);

    private final MethodVisitor asm;
    private final List<Object> constants;
    private final Deque<List<Local>> arguments = new ArrayDeque<>();
    private int next = 2;
    private int lines;

    /**
     * An empty method.
     *
     * @param constants the objects that the class knows; more may be added
     * @param lines how many lines of the slate are taken
     */
    Code(MethodVisitor asm, List<Object> constants, int lines) {
        this.asm = asm;
        this.constants = constants;
        this.lines = lines;
    }

    // Local variables.

    private int storedInt() {
        asm.visitVarInsn(Opcodes.ISTORE, next);
        return next++;
    }

    /** Stores the state that lies on the stack. */
    Local state() {
        return new Local(storedInt(), Local.NONE);
    }

    /** Stores the value that lies on the stack. Of several doubles the last lies on top. */
    int value(Shape shape) {
        if (shape.doubles() == 0) {
            return storedInt();
        }
        int first = next;
        next += 2 * shape.doubles();
        for (int i = shape.doubles() - 1; i >= 0; i--) {
            asm.visitVarInsn(Opcodes.DSTORE, first + 2 * i);
        }
        return first;
    }

    /** Stores the value that lies on the stack, and below it its state. */
    Local both(Shape shape) {
        int value = shape.isCondition() ? Local.NONE : value(shape);
        return new Local(storedInt(), value);
    }

    /** A line of the slate that nobody else writes on. */
    int line() {
        return lines++;
    }

    /** How many lines are taken by now. */
    int lines() {
        return lines;
    }

    /** Variables for what is worked out on several ways. */
    Local reserved(Shape shape) {
        push(0);
        if (shape.isWorked()) {
            return new Local(storedInt(), line());
        }
        for (int i = 0; i < shape.doubles(); i++) {
            push(0.0);
        }
        if (shape.isRow()) {
            push(0);
        }
        return both(shape);
    }

    /** What was worked out on one of these ways. */
    void move(Shape shape, Local from, Local to) {
        load(from);
        storeState(to);
        for (int i = 0; i < shape.doubles(); i++) {
            asm.visitVarInsn(Opcodes.DLOAD, from.value() + 2 * i);
            asm.visitVarInsn(Opcodes.DSTORE, to.value() + 2 * i);
        }
        if (shape.isRow()) {
            asm.visitVarInsn(Opcodes.ILOAD, from.value());
            asm.visitVarInsn(Opcodes.ISTORE, to.value());
        }
    }

    /** Puts a state into a variable of several ways. */
    void storeState(Local to) {
        asm.visitVarInsn(Opcodes.ISTORE, to.state());
    }

    /** Loads the state. */
    void load(Local from) {
        if (from.mayLack()) {
            asm.visitVarInsn(Opcodes.ILOAD, from.state());
        } else {
            push(0);
        }
    }

    /** Loads what several lack between them; tells whether any of them may lack anything, and leaves nothing where not. */
    boolean loadLacks(List<Local> of) {
        boolean some = false;
        for (Local each : of) {
            if (each.mayLack()) {
                load(each);
                if (some) {
                    asm.visitInsn(Opcodes.IOR);
                }
                some = true;
            }
        }
        return some;
    }

    /** Loads one of its doubles. */
    void loadDouble(Local from, int which) {
        asm.visitVarInsn(Opcodes.DLOAD, from.value() + 2 * which);
    }

    /** Loads the value: all of its doubles, or the place of its row. */
    void loadValue(Shape shape, Local from) {
        for (int i = 0; i < shape.doubles(); i++) {
            loadDouble(from, i);
        }
        if (shape.isRow()) {
            asm.visitVarInsn(Opcodes.ILOAD, from.value());
        }
    }

    // What functions are applied to.

    /** Writes the body of a function, which is applied to these. */
    Local within(List<Local> applied, Term.Writing body) {
        arguments.push(applied);
        Local result = body.to(this);
        arguments.pop();
        return result;
    }

    Local argument(int number) {
        List<Local> applied = arguments.peek();
        if (applied == null) {
            throw new IllegalStateException("an argument outside of a function");
        }
        return applied.get(number);
    }

    // Constants.

    void push(int number) {
        if (number >= 0 && number <= 5) {
            asm.visitInsn(Opcodes.ICONST_0 + number);
        } else if (number >= Short.MIN_VALUE && number <= Short.MAX_VALUE) {
            asm.visitIntInsn(
                    number >= Byte.MIN_VALUE && number <= Byte.MAX_VALUE ? Opcodes.BIPUSH : Opcodes.SIPUSH, number);
        } else {
            asm.visitLdcInsn(number);
        }
    }

    void push(double number) {
        asm.visitLdcInsn(number);
    }

    void push(long number) {
        asm.visitLdcInsn(number);
    }

    /** An object that the class was given when it was made: to the compiler of the machine a constant like any other. */
    void push(Object constant, Class<?> type) {
        int place = constants.size();
        constants.add(constant);
        asm.visitLdcInsn(new ConstantDynamic("_", Type.getDescriptor(type), CLASS_DATA, place));
    }

    // Calls, branches, and the two arguments.

    void figures() {
        asm.visitVarInsn(Opcodes.ALOAD, FIGURES);
    }

    void outcomes() {
        asm.visitVarInsn(Opcodes.ALOAD, OUTCOMES);
    }

    /** Loads the row of states: of the figures, or of what was computed on the way. */
    void states(boolean computed) {
        row(computed, "state", int[].class);
    }

    /** Loads the row of numbers. */
    void numbers(boolean computed) {
        row(computed, "number", double[].class);
    }

    private void row(boolean computed, String name, Class<?> type) {
        if (computed) {
            outcomes();
        } else {
            figures();
        }
        field(computed ? Outcomes.class : Figures.class, name, type);
    }

    /** Loads a number from a fixed place. */
    void number(boolean computed, int place) {
        numbers(computed);
        push(place);
        asm.visitInsn(Opcodes.DALOAD);
    }

    void field(Class<?> of, String name, Class<?> type) {
        asm.visitFieldInsn(Opcodes.GETFIELD, Type.getInternalName(of), name, Type.getDescriptor(type));
    }

    /** Calls a static method. */
    void call(Class<?> of, String name, Class<?> result, Class<?>... given) {
        asm.visitMethodInsn(Opcodes.INVOKESTATIC, Type.getInternalName(of), name, descriptor(result, given), false);
    }

    /** Calls a method of an object. */
    void callOn(Class<?> of, String name, Class<?> result, Class<?>... given) {
        asm.visitMethodInsn(Opcodes.INVOKEVIRTUAL, Type.getInternalName(of), name, descriptor(result, given), false);
    }

    private static String descriptor(Class<?> result, Class<?>... given) {
        List<Type> types = new ArrayList<>();
        for (Class<?> each : given) {
            types.add(Type.getType(each));
        }
        return Type.getMethodDescriptor(Type.getType(result), types.toArray(Type[]::new));
    }

    void instruction(int opcode) {
        asm.visitInsn(opcode);
    }

    void jump(int opcode, Label to) {
        asm.visitJumpInsn(opcode, to);
    }

    void place(Label here) {
        asm.visitLabel(here);
    }

    /** One way for each of the numbers from 0 on, by the number on the stack, which is one of these. */
    void oneOf(int ways, IntConsumer way) {
        Label[] starts = new Label[ways];
        for (int i = 0; i < ways; i++) {
            starts[i] = new Label();
        }
        Label end = new Label();
        asm.visitTableSwitchInsn(0, ways - 1, starts[ways - 1], starts);
        for (int i = 0; i < ways; i++) {
            asm.visitLabel(starts[i]);
            way.accept(i);
            asm.visitJumpInsn(Opcodes.GOTO, end);
        }
        asm.visitLabel(end);
    }
}

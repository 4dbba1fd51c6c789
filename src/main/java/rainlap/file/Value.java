package rainlap.file;

import java.util.List;

/** One value of a file, and the byte at which it begins. */
sealed interface Value {
    int at();

    /** What it is, for messages: {@code a text}. */
    String what();

    /** A text. */
    record Text(int at, String text) implements Value {
        @Override
        public String what() {
            return "a text";
        }
    }

    /** A number; NaN and infinities occur and are refused where a number is used. */
    record Num(int at, double number) implements Value {
        @Override
        public String what() {
            return "a number";
        }
    }

    /** True or false. */
    record Flag(int at, boolean on) implements Value {
        @Override
        public String what() {
            return on ? "true" : "false";
        }
    }

    /** The value null. */
    record Nothing(int at) implements Value {
        @Override
        public String what() {
            return "null";
        }
    }

    /** A list. */
    record Items(int at, List<Value> items) implements Value {
        @Override
        public String what() {
            return "a list";
        }
    }

    /** An object: keys with their values, in the file's order, each key once. */
    record Keys(int at, List<Member> members) implements Value {
        @Override
        public String what() {
            return "an object";
        }
    }

    /** One key of an object and its value; {@code at} is the place of the key. */
    record Member(int at, String name, Value value) {}
}

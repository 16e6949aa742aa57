package io.axiswright.engine.finding;

/** The kinds of fault an input document can have. */
public enum FaultCode {
    /** A required member is absent or null. */
    MISSING,
    /** A member that nothing reads. */
    UNKNOWN_MEMBER,
    /** A member twice in one object. */
    DUPLICATE_MEMBER,
    /** A string where a number belongs, and the like. */
    WRONG_TYPE,
    /** A unit of another dimension, or one we do not know. */
    WRONG_UNIT,
    /** A word outside a closed list. */
    UNKNOWN_VALUE,
    /** A number that makes no sense there. */
    OUT_OF_RANGE,
    /** Too few or too many elements or characters. */
    WRONG_COUNT,
    /** An id used twice where it must be unique. */
    DUPLICATE_ID,
    /** A reference to something that is not there. */
    DANGLING_REFERENCE,
    /** Items that need each other in a circle. */
    CYCLIC_NEEDS,
    /** Data that contradict each other. */
    INCONSISTENT
}

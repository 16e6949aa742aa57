package io.axiswright.engine.topology;

/** What is known of layouts with less of the second measure than any that was found. */
public enum TradeOffEnd {
    /** It is proven that there is none. */
    NONE_PROVEN,
    /** None was found within the work allowed, nor is it proven that there is none. */
    NONE_FOUND,
    /** There may be some: the searches were used up before. */
    NOT_EXAMINED
}

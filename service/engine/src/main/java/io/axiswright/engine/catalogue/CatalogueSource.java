package io.axiswright.engine.catalogue;

import java.util.List;

/** How a request gives the catalogue; decides where pointers to things of the catalogue lead in that request. */
public enum CatalogueSource {
    /** Sent along in the member {@code inlineCatalogue}: a pointer leads to the very item. */
    SENT {
        @Override
        public String pointer(String place) {
            return "/inlineCatalogue" + place;
        }
    },
    /**
     * Stored, and named by the member {@code catalogue}: every pointer leads to that reference, for it is all of the
     * catalogue that stands in the request and that its sender can change there. The item is named in words.
     */
    STORED {
        @Override
        public String pointer(String place) {
            return "/catalogue";
        }
    };

    /**
     * JSON Pointer, in the request, to a place of the catalogue.
     *
     * @param place JSON Pointer to it in the catalogue
     */
    public abstract String pointer(String place);

    /** JSON Pointer, in the request, to one of the catalogue's lists; to the whole catalogue if it is empty, and may be absent. */
    public String list(String member, List<?> items) {
        return pointer(items.isEmpty() ? "" : "/" + member);
    }

    /** JSON Pointer, in the request, to an element of one of the catalogue's lists. */
    public String item(String member, int index) {
        return pointer("/" + member + "/" + index);
    }
}

package org.shedboard.files;

import java.util.List;
import org.shedboard.estimate.Catalogue;
import org.shedboard.register.Notice;

/** What makers ask for, as a file: {@code {"notices": [...]}}. */
public final class NoticesFile {
    private NoticesFile() {}

    /** Every work and class is of this catalogue. */
    public static Reading<List<Notice>> read(String json, Catalogue catalogue) {
        NoticeFields notices = new NoticeFields(catalogue);
        return Reading.of(json, root -> {
            root.findText("note");
            return root.objects("notices", notices::read);
        });
    }
}

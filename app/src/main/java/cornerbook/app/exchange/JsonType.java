package cornerbook.app.exchange;

import cornerbook.core.say.Said;

/** Types of JSON as a schema names them. */
enum JsonType implements Said {
    STRING,
    NUMBER,
    INTEGER,
    BOOLEAN,
    OBJECT,
    ARRAY,
    NULL
}

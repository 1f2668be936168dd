// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/report_json.h"

#include "core/input_error.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <limits>
#include <type_traits>

namespace evenfall::reports {
namespace {

using Json = nlohmann::ordered_json;

/// The members of each record, named once; the same list writes and reads.
template <class T>
struct Fields;

template <>
struct Fields<NumberFormat> {
    static void go(auto& a, auto& v) {
        a("decimals", v.decimals), a("unit", v.unit), a("percent", v.percent);
    }
};
template <>
struct Fields<Limits> {
    static void go(auto& a, auto& v) { a("low", v.low), a("high", v.high), a("prompt", v.prompt); }
};
template <>
struct Fields<Cell> {
    static void go(auto& a, auto& v) {
        a("value", v.value), a("format", v.format), a("formula", v.formula), a("name", v.name);
        a("role", v.role), a("limits", v.limits), a("assumed", v.assumed);
    }
};
template <>
struct Fields<Column> {
    static void go(auto& a, auto& v) {
        a("key", v.key), a("title", v.title), a("format", v.format), a("is_text", v.is_text);
    }
};
template <>
struct Fields<Row> {
    static void go(auto& a, auto& v) { a("key", v.key), a("cells", v.cells), a("kind", v.kind); }
};
template <>
struct Fields<Table> {
    static void go(auto& a, auto& v) {
        a("key", v.key), a("title", v.title), a("sentence", v.sentence), a("columns", v.columns);
        a("rows", v.rows), a("footnotes", v.footnotes);
    }
};
template <>
struct Fields<ColumnRef> {
    static void go(auto& a, auto& v) { a("table", v.table), a("column", v.column); }
};
template <>
struct Fields<Series> {
    static void go(auto& a, auto& v) {
        a("name", v.name), a("values", v.values), a("draw", v.draw), a("tone", v.tone);
        a("low", v.low), a("high", v.high);
    }
};
template <>
struct Fields<Axis> {
    static void go(auto& a, auto& v) { a("title", v.title), a("unit", v.unit); }
};
template <>
struct Fields<SeriesChart> {
    static void go(auto& a, auto& v) {
        a("categories", v.categories), a("series", v.series), a("x", v.x), a("y", v.y);
        a("horizontal", v.horizontal);
    }
};
template <>
struct Fields<Field> {
    static void go(auto& a, auto& v) {
        a("x0", v.x0), a("y0", v.y0), a("dx", v.dx), a("dy", v.dy), a("columns", v.columns);
        a("rows", v.rows), a("values", v.values), a("method", v.method);
    }
};
template <>
struct Fields<Contour> {
    static void go(auto& a, auto& v) { a("level", v.level), a("lines", v.lines); }
};
template <>
struct Fields<MapChart> {
    static void go(auto& a, auto& v) {
        a("x", v.x), a("y", v.y), a("value", v.value), a("label", v.label);
        a("x_axis", v.x_axis), a("y_axis", v.y_axis), a("value_axis", v.value_axis);
        a("decimals", v.decimals), a("field", v.field), a("contours", v.contours);
    }
};
template <>
struct Fields<Chart> {
    static void go(auto& a, auto& v) {
        a("key", v.key), a("title", v.title), a("sentence", v.sentence), a("content", v.content);
    }
};
template <>
struct Fields<Paragraph> {
    static void go(auto& a, auto& v) { a("text", v.text); }
};
template <>
struct Fields<Section> {
    static void go(auto& a, auto& v) { a("key", v.key), a("title", v.title), a("blocks", v.blocks); }
};
template <>
struct Fields<Note> {
    static void go(auto& a, auto& v) {
        a("subject", v.subject), a("method", v.method), a("convention", v.convention);
        a("source", v.source), a("assumed", v.assumed);
    }
};
template <>
struct Fields<Fix> {
    static void go(auto& a, auto& v) {
        a("what", v.what), a("why", v.why), a("water", v.water), a("money", v.money);
    }
};
template <>
struct Fields<Answer> {
    static void go(auto& a, auto& v) {
        a("sentences", v.sentences), a("figures", v.figures), a("fixes", v.fixes);
    }
};
template <>
struct Fields<Caution> {
    static void go(auto& a, auto& v) { a("title", v.title), a("paragraphs", v.paragraphs); }
};
template <>
struct Fields<Signature> {
    static void go(auto& a, auto& v) {
        a("role", v.role), a("name", v.name), a("certification", v.certification);
        a("expires", v.expires);
    }
};
template <>
struct Fields<Report> {
    static void go(auto& a, auto& v) {
        a("kind", v.kind), a("title", v.title), a("subtitle", v.subtitle);
        a("organisation", v.organisation), a("created", v.created), a("program", v.program);
        a("caution", v.caution), a("answer", v.answer), a("sections", v.sections);
        a("notes", v.notes), a("gaps", v.gaps), a("signatures", v.signatures);
        a("sheets", v.sheets);
    }
};

/// Enumerators are written as numbers that are frozen; the largest one for each.
template <class E>
constexpr int last_of = 0;
template <>
constexpr int last_of<CellRole> = static_cast<int>(CellRole::choice);
template <>
constexpr int last_of<RowKind> = static_cast<int>(RowKind::total);
template <>
constexpr int last_of<Draw> = static_cast<int>(Draw::line);
template <>
constexpr int last_of<Tone> = static_cast<int>(Tone::low_quarter);

template <class T>
concept Record = requires { sizeof(Fields<T>); };

// Writing ------------------------------------------------------------------------------------

template <class T>
Json written(const T& v);

struct Writer {
    Json& json;
    template <class T>
    void operator()(const char* name, const T& v) {
        json[name] = written(v);
    }
};

template <class T>
struct Tagged {
    static constexpr const char* name = nullptr;
};
template <>
struct Tagged<Paragraph> {
    static constexpr const char* name = "paragraph";
};
template <>
struct Tagged<Table> {
    static constexpr const char* name = "table";
};
template <>
struct Tagged<Chart> {
    static constexpr const char* name = "chart";
};
template <>
struct Tagged<SeriesChart> {
    static constexpr const char* name = "series";
};
template <>
struct Tagged<MapChart> {
    static constexpr const char* name = "map";
};

Json written_value(double v) { return std::isfinite(v) ? Json(v) : Json(nullptr); }
Json written_value(const std::string& v) { return v; }
Json written_value(bool v) { return v; }
Json written_value(int v) { return v; }
Json written_value(std::size_t v) { return v; }
template <class E>
    requires std::is_enum_v<E>
Json written_value(E v) {
    return static_cast<int>(v);
}
Json written_value(const std::array<double, 2>& v) { return Json{v[0], v[1]}; }
template <Record T>
Json written_value(const T& v) {
    Json json = Json::object();
    Writer writer{json};
    Fields<T>::go(writer, v);
    return json;
}
template <class T>
Json written_value(const std::optional<T>& v) {
    return v ? written(*v) : Json(nullptr);
}
template <class T>
Json written_value(const std::vector<T>& v) {
    Json json = Json::array();
    for (const T& item : v) json.push_back(written(item));
    return json;
}
Json written_value(const std::variant<std::monostate, std::string, double>& v) {
    if (const auto* t = std::get_if<std::string>(&v)) return *t;
    if (const auto* d = std::get_if<double>(&v)) return written_value(*d);
    return nullptr;
}
/// Other variants: {"paragraph": {...}}.
template <class... T>
Json written_value(const std::variant<T...>& v) {
    return std::visit(
        [](const auto& item) {
            Json json = Json::object();
            json[Tagged<std::decay_t<decltype(item)>>::name] = written(item);
            return json;
        },
        v);
}

template <class T>
Json written(const T& v) {
    return written_value(v);
}

// Reading ------------------------------------------------------------------------------------

struct Node {
    const Json& json;
    const std::string& file;
    std::string path;

    [[noreturn]] void refuse(const std::string& expected) const {
        throw InputError(Issue{{file, 0, path}, printable(json.dump(-1, ' ', true,
                                                                    Json::error_handler_t::replace)),
                               expected});
    }
    Node member(const char* name) const {
        if (!json.is_object()) refuse("an object");
        const auto found = json.find(name);
        if (found == json.end()) {
            throw InputError(Issue{{file, 0, path}, "no member \"" + std::string(name) + "\"",
                                   "an object with that member"});
        }
        return {*found, file, path.empty() ? name : path + "." + name};
    }
};

template <class T>
void read(const Node& node, T& v);

struct Reader {
    const Node& node;
    template <class T>
    void operator()(const char* name, T& v) {
        read(node.member(name), v);
    }
};

void read_value(const Node& n, double& v) {
    // Only a field has numbers that do not exist; check() refuses them anywhere else.
    if (n.json.is_null()) {
        v = std::numeric_limits<double>::quiet_NaN();
        return;
    }
    if (!n.json.is_number()) n.refuse("a number");
    v = n.json.get<double>();
}
void read_value(const Node& n, std::string& v) {
    if (!n.json.is_string()) n.refuse("a text");
    v = n.json.get<std::string>();
}
void read_value(const Node& n, bool& v) {
    if (!n.json.is_boolean()) n.refuse("true or false");
    v = n.json.get<bool>();
}
void read_value(const Node& n, int& v) {
    if (!n.json.is_number_integer() || n.json.get<double>() < -1e6 || n.json.get<double>() > 1e6) {
        n.refuse("a whole number");
    }
    v = n.json.get<int>();
}
void read_value(const Node& n, std::size_t& v) {
    if (!n.json.is_number_unsigned() || n.json.get<double>() > 1e9) n.refuse("a count");
    v = n.json.get<std::size_t>();
}
template <class E>
    requires std::is_enum_v<E>
void read_value(const Node& n, E& v) {
    int number = 0;
    read_value(n, number);
    if (number < 1 || number > last_of<E>) {
        n.refuse("a number from 1 to " + std::to_string(last_of<E>));
    }
    v = static_cast<E>(number);
}
void read_value(const Node& n, std::array<double, 2>& v) {
    if (!n.json.is_array() || n.json.size() != 2 || !n.json[0].is_number() ||
        !n.json[1].is_number()) {
        n.refuse("two numbers");
    }
    v = {n.json[0].get<double>(), n.json[1].get<double>()};
}
template <Record T>
void read_value(const Node& n, T& v) {
    Reader reader{n};
    Fields<T>::go(reader, v);
}
template <class T>
void read_value(const Node& n, std::optional<T>& v) {
    v.reset();
    if (!n.json.is_null()) read(n, v.emplace());
}
template <class T>
void read_value(const Node& n, std::vector<T>& v) {
    if (!n.json.is_array()) n.refuse("a list");
    v.clear();
    v.reserve(n.json.size());
    for (std::size_t i = 0; i < n.json.size(); ++i) {
        read({n.json[i], n.file, n.path + "[" + std::to_string(i) + "]"}, v.emplace_back());
    }
}
void read_value(const Node& n, std::variant<std::monostate, std::string, double>& v) {
    if (n.json.is_null()) {
        v = std::monostate();
    } else if (n.json.is_string()) {
        v = n.json.get<std::string>();
    } else if (n.json.is_number()) {
        v = n.json.get<double>();
    } else {
        n.refuse("a number, a text or null");
    }
}
template <class... T>
void read_value(const Node& n, std::variant<T...>& v) {
    bool found = false;
    const auto attempt = [&]<class Item>(std::type_identity<Item>) {
        if (found || !n.json.is_object() || !n.json.contains(Tagged<Item>::name)) return;
        found = true;
        Item item;
        read(n.member(Tagged<Item>::name), item);
        v = std::move(item);
    };
    (attempt(std::type_identity<T>()), ...);
    if (!found) n.refuse("an object that names its kind");
}

template <class T>
void read(const Node& node, T& v) {
    read_value(node, v);
}

}  // namespace

std::string write_json(const Report& report) {
    check(report);
    return written(report).dump(1, ' ', false) + "\n";
}

Report read_json(std::string_view text, const std::string& file) {
    Json json;
    try {
        json = Json::parse(text);
    } catch (const Json::exception& e) {
        throw InputError(Issue{{file, 0, {}}, e.what(), "a report in JSON"});
    }
    Report report;
    read({json, file, {}}, report);
    try {
        check(report);
    } catch (const std::logic_error& e) {
        throw InputError(Issue{{file, 0, {}}, e.what(), "a report that is whole"});
    }
    return report;
}

}  // namespace evenfall::reports

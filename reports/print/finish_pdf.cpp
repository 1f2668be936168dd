// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/finish_pdf.h"

#include "core/calendar/date.h"

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include <stdexcept>

namespace evenfall::reports {
namespace {

QPDFObjectHandle unicode(const std::string& text) {
    return QPDFObjectHandle::newUnicodeString(text);
}

/// Sections with their tables and charts below them; first, last, next and previous are what
/// ISO 32000-1, 12.3.3 asks for.
class Outline {
  public:
    Outline(QPDF& pdf, const PageGeometry& geometry)
        : pdf_(pdf), geometry_(geometry), pages_(QPDFPageDocumentHelper(pdf).getAllPages()) {}

    void build(const std::vector<Bookmark>& bookmarks) {
        if (bookmarks.empty()) return;
        root_ = pdf_.makeIndirectObject(QPDFObjectHandle::newDictionary());
        root_.replaceKey("/Type", QPDFObjectHandle::newName("/Outlines"));
        QPDFObjectHandle parent;
        for (const Bookmark& b : bookmarks) {
            QPDFObjectHandle item = made(b);
            if (b.level == 0 || parent.isNull() || !parent.isInitialized()) {
                append(root_, item);
                parent = item;
            } else {
                append(parent, item);
            }
        }
        pdf_.getRoot().replaceKey("/Outlines", root_);
        pdf_.getRoot().replaceKey("/PageMode", QPDFObjectHandle::newName("/UseOutlines"));
    }

  private:
    QPDFObjectHandle made(const Bookmark& b) {
        auto item = pdf_.makeIndirectObject(QPDFObjectHandle::newDictionary());
        item.replaceKey("/Title", unicode(b.title));
        auto target = QPDFObjectHandle::newArray();
        target.appendItem(pages_.at(static_cast<std::size_t>(b.page)).getObjectHandle());
        target.appendItem(QPDFObjectHandle::newName("/XYZ"));
        target.appendItem(QPDFObjectHandle::newInteger(0));
        target.appendItem(QPDFObjectHandle::newInteger(
            static_cast<long long>(geometry_.height - b.top)));
        target.appendItem(QPDFObjectHandle::newInteger(0));
        item.replaceKey("/Dest", target);
        return item;
    }

    static void append(QPDFObjectHandle parent, QPDFObjectHandle item) {
        item.replaceKey("/Parent", parent);
        if (parent.hasKey("/Last")) {
            auto last = parent.getKey("/Last");
            last.replaceKey("/Next", item);
            item.replaceKey("/Prev", last);
        } else {
            parent.replaceKey("/First", item);
        }
        parent.replaceKey("/Last", item);
        const long long count =
            parent.hasKey("/Count") ? parent.getKey("/Count").getIntValue() : 0;
        // Items below a section stay folded: their count is negative.
        const bool top = parent.isDictionaryOfType("/Outlines");
        parent.replaceKey("/Count", QPDFObjectHandle::newInteger(top ? count + 1 : count - 1));
    }

    QPDF& pdf_;
    const PageGeometry& geometry_;
    std::vector<QPDFPageObjectHelper> pages_;
    QPDFObjectHandle root_;
};

/// "D:20240229133000Z" and "2024-02-29T13:30:00Z".
void set_dates(QPDF& pdf, const std::string& created) {
    const auto at = calendar::parse_instant(created);
    auto info = pdf.getTrailer().getKey("/Info");
    if (info.isDictionary()) {
        if (at) {
            std::string digits;
            for (const char c : calendar::format_instant(*at)) {
                if (c >= '0' && c <= '9') digits += c;
            }
            info.replaceKey("/CreationDate", QPDFObjectHandle::newString("D:" + digits + "Z"));
        } else {
            info.removeKey("/CreationDate");
        }
        info.removeKey("/ModDate");
    }
    auto metadata = pdf.getRoot().getKey("/Metadata");
    if (!metadata.isStream()) return;
    const auto buffer = metadata.getStreamData();
    std::string xmp(reinterpret_cast<const char*>(buffer->getBuffer()), buffer->getSize());
    // Without a date of the report a fixed one stands in: PDF/A wants the two places to agree,
    // and an XMP date must be a date.
    const std::string date = at ? calendar::format_instant(*at) : "1970-01-01T00:00:00Z";
    for (const char* name : {"xmp:CreateDate=\"", "xmp:ModifyDate=\"", "xmp:MetadataDate=\""}) {
        const auto found = xmp.find(name);
        if (found == std::string::npos) continue;
        const auto first = found + std::string(name).size();
        xmp.replace(first, xmp.find('"', first) - first, date);
    }
    // Qt puts a random identifier of the document into the packet of newer versions.
    metadata.replaceStreamData(xmp, QPDFObjectHandle::newNull(), QPDFObjectHandle::newNull());
}

}  // namespace

void finish_pdf(const std::string& pdf, const std::string& created,
                const std::vector<Bookmark>& bookmarks, const PageGeometry& geometry,
                const std::string& path) {
    try {
        QPDF document;
        document.setSuppressWarnings(true);
        document.processMemoryFile("report", pdf.data(), pdf.size());
        set_dates(document, created);
        // Half of a new identifier is the old one, and Qt draws that at random.
        document.getTrailer().removeKey("/ID");
        document.getRoot().replaceKey("/Lang", QPDFObjectHandle::newString("en"));
        Outline(document, geometry).build(bookmarks);
        QPDFWriter writer(document, path.c_str());
        writer.setDeterministicID(true);
        writer.setObjectStreamMode(qpdf_o_disable);  // PDF 1.4, which PDF/A-1 is built on
        writer.setPreserveUnreferencedObjects(false);
        writer.write();
    } catch (const std::exception& e) {
        throw std::runtime_error("cannot write " + path + ": " + e.what());
    }
}

}  // namespace evenfall::reports

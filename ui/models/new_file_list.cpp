// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/new_file_list.h"

#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "ui/models/file_name.h"
#include "ui/models/text.h"

#include <QFileInfo>
#include <utility>

namespace lapwright::models {
namespace {

constexpr double bytes_per_megabyte = 1e6; // SI

} // namespace

using workspace::NewFile;

NewFileList::NewFileList(QObject* parent) : TextTable(parent) {
    set_files({});
}

void NewFileList::set_files(std::vector<NewFile> files) {
    files_ = std::move(files);
    show_columns({
        column_of(files_, tr("File"), false, [](const NewFile& one) { return QFileInfo(path(one.path)).fileName(); }),
        column_of(files_, tr("Folder"), false, [](const NewFile& one) { return QFileInfo(path(one.path)).path(); }),
        column_of(files_, tr("Written"), false,
                  [](const NewFile& one) { return text(base::date_text(one.changed_unix_s)); }),
        column_of(files_, tr("Size"), true,
                  [](const NewFile& one) {
                      const double megabytes = static_cast<double>(one.size_bytes) / bytes_per_megabyte;
                      return tr("%1 MB").arg(text(base::shown_text(megabytes, megabytes < 10.0 ? 1 : 0)));
                  }),
    });
}

QString NewFileList::path_at(int row) const {
    return path(files_.at(static_cast<std::size_t>(row)).path);
}

} // namespace lapwright::models
